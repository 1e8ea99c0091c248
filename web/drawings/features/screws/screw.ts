import { dot, line, n, type Point, polygon } from "../../pen.ts";
import { drift, row } from "../curves.ts";
import { body, detail, edge, type Mark } from "../mark.ts";

/** A wood screw, upright with its head above. Half widths and lengths in drawing units. */
export interface Screw {
  readonly axis: number;
  readonly top: number;
  readonly foot: number;
  readonly head: number;
  /** Plain shank under the head and where the thread begins. */
  readonly shank: { readonly top: number; readonly foot: number };
  readonly threadFrom: number;
  readonly pitch: number;
  /** Half widths over the crests, at the beginning of the thread and at its end. */
  readonly crest: { readonly top: number; readonly foot: number };
  /** Depth of the thread. */
  readonly depth: number;
  /** How the pitch wanders: 0 for a machine. */
  readonly wander?: number;
  readonly end: "blunt" | "gimlet" | "filed";
}

const COUNTERSINK = 28;

/** Heights of the crests on the right side. */
export function crests({ threadFrom, foot, pitch, wander = 0, end }: Screw): readonly number[] {
  const last = end === "blunt" ? foot : foot - 6;
  const at: number[] = [];
  for (let y = threadFrom, i = 0; y < last; i++) {
    at.push(y);
    y += pitch * (1 + wander * drift(i, 5));
  }
  return at;
}

/** Half width over the crests at a height; a gimlet point runs out evenly, a filed one ends in flats. */
export function halfAt(screw: Screw, y: number): number {
  const { threadFrom, foot, crest, end } = screw;
  const t = (y - threadFrom) / (foot - threadFrom);
  const straight = crest.top + (crest.foot - crest.top) * t;
  if (end !== "gimlet") return straight;
  return Math.max(1.2, straight * Math.min(1, (1 - t) / 0.42));
}

const bodyOfScrew = (screw: Screw): string => {
  const { axis, top, foot, head, shank, threadFrom, depth, end } = screw;
  const heights = crests(screw);
  const flank = (side: -1 | 1): Point[] =>
    heights.flatMap((y, i): Point[] => {
      const next = heights[i + 1] ?? foot;
      const shifted = side === 1 ? 0 : (next - y) / 2;
      const out = halfAt(screw, y + shifted);
      const root = Math.max(0.8, halfAt(screw, y + shifted + (next - y) / 2) - depth);
      return [
        [axis + side * out, y + shifted],
        [axis + side * root, Math.min(foot, y + shifted + (next - y) / 2)],
      ];
    });
  const tip: Point[] =
    end === "blunt"
      ? [
          [axis + shank.foot * 0.72, foot],
          [axis - shank.foot * 0.72, foot],
        ]
      : [[axis, foot + (end === "filed" ? 16 : 2)]];
  return polygon(
    [axis - head, top],
    [axis + head, top],
    [axis + shank.top, top + COUNTERSINK],
    [axis + shank.foot, threadFrom],
    ...flank(1),
    ...tip,
    ...flank(-1).toReversed(),
    [axis - shank.foot, threadFrom],
    [axis - shank.top, top + COUNTERSINK],
  );
};

/** The slanting crest lines of the thread between its two sides. */
const threadLines = (screw: Screw): string => {
  const heights = crests(screw);
  return heights
    .map((y, i) => {
      const next = heights[i + 1] ?? screw.foot;
      const left = y + (next - y) / 2;
      return line([screw.axis + halfAt(screw, y), y], [screw.axis - halfAt(screw, left), left]);
    })
    .join("");
};

/** The screw from the side. */
export const screwMarks = (screw: Screw): readonly Mark[] => [
  body(bodyOfScrew(screw)),
  edge(threadLines(screw)),
  detail(
    line(
      [screw.axis - screw.shank.top, screw.top + COUNTERSINK],
      [screw.axis + screw.shank.top, screw.top + COUNTERSINK],
    ),
  ),
];

/** A slotted head from above: the slot lies `off` the middle and is turned by `turn` degrees. */
export function slottedHead(cx: number, cy: number, r: number, off = 0, turn = 0): readonly Mark[] {
  const angle = (turn * Math.PI) / 180;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const half = r * 0.13;
  const at = (along: number, across: number): Point => [
    cx + ux * along - uy * (off + across),
    cy + uy * along + ux * (off + across),
  ];
  const reach = Math.sqrt(Math.max(0, r * r - (Math.abs(off) + half) ** 2));
  return [
    body(dot(cx, cy, r)),
    body(polygon(at(-reach, -half), at(reach, -half), at(reach, half), at(-reach, half)), "edge"),
  ];
}

/** Rings that a lathe leaves on a head. */
export const latheRings = (cx: number, cy: number, r: number, count: number): string =>
  row(count, (i) => dot(cx, cy, (r * (i + 1)) / (count + 1)));

/** File strokes over a head: short, straight, in two directions. */
export const fileStrokes = (cx: number, cy: number, r: number): string =>
  row(7, (i) => {
    const x = cx - r * 0.6 + (r * 1.2 * i) / 6;
    return `M${n(x)} ${n(cy - r * 0.72 + Math.abs(i - 3) * 2)}l${n(r * 0.16)} ${n(r * 0.36)}`;
  });
