import { dot, n, polygon } from "../../pen.ts";
import { closed, open, placed, type Run, reversed, run } from "../curves.ts";

/** Half of a plate, from the top of its axis to its foot, in units of its own; drawn on both sides of `cx`. */
export function bothHalves(cx: number, cy: number, half: Run, size = 1): string {
  const right = placed(half, cx, cy, size, size);
  const left = reversed(placed(half, cx, cy, -size, size));
  const joined = open(left).replace(/^M[^LC]*/, "");
  return `${open(right)}${joined}z`;
}

/** Many curves and cusps: the plain shaped plate. */
export const WILLOW: Run = run(
  [0, -34],
  ["c", 8, -22, 18, -38, 30, -28],
  ["c", 36, -36, 52, -30, 52, -18],
  ["c", 62, -20, 74, -14, 86, -16],
  ["c", 76, -6, 80, 4, 68, 6],
  ["c", 72, 16, 58, 22, 50, 14],
  ["c", 44, 26, 28, 22, 22, 18],
  ["c", 14, 24, 8, 24, 0, 34],
);

/** Fewer, rounder curves: the early engraved plate. */
export const BATWING: Run = run(
  [0, -32],
  ["c", 10, -30, 14, -22, 24, -24],
  ["c", 40, -30, 58, -22, 60, -10],
  ["c", 68, -12, 76, -8, 84, -14],
  ["c", 80, 2, 72, 14, 58, 14],
  ["c", 48, 28, 30, 24, 22, 20],
  ["c", 12, 22, 8, 26, 0, 34],
);

/** A bail between two posts `half` from the axis: a rod that swells in the middle, closed. */
export function bail(cx: number, y: number, half: number, drop: number, thin: number, thick: number): string {
  const outer = closed(
    run(
      [cx - half - thin, y],
      [
        "c",
        cx - half - thin - 4,
        y + drop * 0.9,
        cx - half * 0.5,
        y + drop + thick / 2,
        cx,
        y + drop + thick / 2,
      ],
      ["c", cx + half * 0.5, y + drop + thick / 2, cx + half + thin + 4, y + drop * 0.9, cx + half + thin, y],
      ["l", cx + half - thin, y],
      [
        "c",
        cx + half + thin - 4,
        y + drop * 0.74,
        cx + half * 0.5,
        y + drop - thick / 2,
        cx,
        y + drop - thick / 2,
      ],
      [
        "c",
        cx - half * 0.5,
        y + drop - thick / 2,
        cx - half - thin + 4,
        y + drop * 0.74,
        cx - half + thin,
        y,
      ],
    ),
  );
  return outer;
}

/** A flat ring of round rod. */
export const ring = (cx: number, cy: number, r: number, thick: number): string =>
  `${dot(cx, cy, r + thick / 2)}${dot(cx, cy, r - thick / 2)}`;

/** Petals round a middle: `count` of them between two radii. */
export const rosette = (cx: number, cy: number, inner: number, outer: number, count: number): string =>
  Array.from({ length: count }, (_, i) => {
    const step = 360 / count;
    const at = (r: number, degrees: number): readonly [number, number] => [
      cx + r * Math.cos((degrees * Math.PI) / 180),
      cy + r * Math.sin((degrees * Math.PI) / 180),
    ];
    const [x0, y0] = at(inner, i * step - step / 2);
    const [x1, y1] = at(inner, i * step + step / 2);
    const [ax, ay] = at(outer * 1.12, i * step - step * 0.36);
    const [bx, by] = at(outer * 1.12, i * step + step * 0.36);
    return `M${n(x0)} ${n(y0)}C${n(ax)} ${n(ay)} ${n(bx)} ${n(by)} ${n(x1)} ${n(y1)}`;
  }).join("");

/** A regular polygon with a flat side upwards, as a cut knob has. */
export const facets = (cx: number, cy: number, r: number, count: number): string =>
  polygon(
    ...Array.from({ length: count }, (_, i): readonly [number, number] => {
      const a = ((i + 0.5) / count) * 2 * Math.PI;
      return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
    }),
  );
