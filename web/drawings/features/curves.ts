import { n, type Point } from "../pen.ts";

/**
 * One step of an outline, from where the last one ended:
 * `l` straight; `h` and `v` a quarter of an ellipse that leaves along x or along y; `sh` and `sv` two such quarters,
 * one hollow and one round, that leave and arrive along x or along y (a cyma); `c` any cubic.
 */
export type Step =
  | readonly ["l" | "h" | "v" | "sh" | "sv", number, number]
  | readonly ["c", number, number, number, number, number, number];

/** An open outline: where it starts and how it goes on. */
export interface Run {
  readonly start: Point;
  readonly steps: readonly Step[];
}

export const run = (start: Point, ...steps: readonly Step[]): Run => ({ start, steps });

/** Length of the handle of a cubic that follows a quarter circle of radius 1. */
const QUARTER = 0.5523;

type Cubic = readonly [Point, Point, Point];
const isLine = (piece: Cubic | Point): piece is Point => typeof piece[0] === "number";

const quarter = ([x0, y0]: Point, [x1, y1]: Point, leaves: "h" | "v"): Cubic =>
  leaves === "h"
    ? [
        [x0 + QUARTER * (x1 - x0), y0],
        [x1, y1 - QUARTER * (y1 - y0)],
        [x1, y1],
      ]
    : [
        [x0, y0 + QUARTER * (y1 - y0)],
        [x1 - QUARTER * (x1 - x0), y1],
        [x1, y1],
      ];

function piecesOf({ start, steps }: Run): (Cubic | Point)[] {
  let from: Point = start;
  return steps.flatMap((step): (Cubic | Point)[] => {
    const at = from;
    if (step[0] === "c") {
      from = [step[5], step[6]];
      return [[[step[1], step[2]], [step[3], step[4]], from]];
    }
    const to: Point = [step[1], step[2]];
    from = to;
    if (step[0] === "l") return [to];
    if (step[0] === "h" || step[0] === "v") return [quarter(at, to, step[0])];
    const middle: Point = [(at[0] + to[0]) / 2, (at[1] + to[1]) / 2];
    const first = step[0] === "sh" ? "h" : "v";
    return [quarter(at, middle, first), quarter(middle, to, first === "h" ? "v" : "h")];
  });
}

const p = ([x, y]: Point): string => `${n(x)} ${n(y)}`;

const followed = (pieces: readonly (Cubic | Point)[]): string =>
  pieces.map((piece) => (isLine(piece) ? `L${p(piece)}` : `C${piece.map(p).join(" ")}`)).join("");

/** The run as an open path. */
export const open = (way: Run): string => `M${p(way.start)}${followed(piecesOf(way))}`;

/** The run closed by straight lines through `corners`. */
export const closed = (way: Run, ...corners: readonly Point[]): string =>
  `${open(way)}${corners.map((corner) => `L${p(corner)}`).join("")}z`;

/** The run gone through backwards. */
export function reversed(way: Run): Run {
  const pieces = piecesOf(way);
  const ends = [way.start, ...pieces.map((piece): Point => (isLine(piece) ? piece : piece[2]))];
  return {
    start: ends.at(-1) as Point,
    steps: pieces.toReversed().map((piece, i): Step => {
      const to = ends[ends.length - 2 - i] as Point;
      return isLine(piece) ? ["l", ...to] : ["c", ...piece[1], ...piece[0], ...to];
    }),
  };
}

const moved = (way: Run, move: (point: Point) => Point): Run => ({
  start: move(way.start),
  steps: piecesOf(way).map((piece): Step => {
    if (isLine(piece)) return ["l", ...move(piece)];
    return ["c", ...move(piece[0]), ...move(piece[1]), ...move(piece[2])];
  }),
});

/** The run moved by (dx, dy) after scaling about the origin. */
export const placed = (way: Run, dx: number, dy: number, sx = 1, sy = sx): Run =>
  moved(way, ([x, y]) => [dx + sx * x, dy + sy * y]);

/** What a turner makes of a run of (radius, y): the outline on both sides of the axis `cx`, closed at both ends. */
export function turnedOn(cx: number, way: Run): string {
  const right = placed(way, cx, 0);
  const left = reversed(placed(way, cx, 0, -1, 1));
  return `${open(right)}L${p(left.start)}${followed(piecesOf(left))}z`;
}

/** An arc about (cx, cy) from one angle to another, in degrees, clockwise from the right; `ry` makes it elliptical. */
export function arc(cx: number, cy: number, r: number, from: number, to: number, ry = r): string {
  const at = (degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    return [cx + r * Math.cos(angle), cy + ry * Math.sin(angle)];
  };
  const isLarge = Math.abs(to - from) > 180 ? 1 : 0;
  return `M${p(at(from))}A${n(r)} ${n(ry)} 0 ${isLarge} ${to > from ? 1 : 0} ${p(at(to))}`;
}

/** A smooth open line through points. */
export function smooth(...points: readonly Point[]): string {
  const at = (i: number): Point => points[Math.max(0, Math.min(points.length - 1, i))] as Point;
  const handle = (from: number, a: number, b: number): Point => [
    at(from)[0] + (at(a)[0] - at(b)[0]) / 6,
    at(from)[1] + (at(a)[1] - at(b)[1]) / 6,
  ];
  const path = points
    .slice(1)
    .map((to, i) => `C${p(handle(i, i + 1, i - 1))} ${p(handle(i + 1, i, i + 2))} ${p(to)}`);
  return `M${p(at(0))}${path.join("")}`;
}

/** A number from -1 to 1 that looks like chance and is always the same for the same `i` and `seed`. */
export const drift = (i: number, seed = 0): number => ((i * i * 61 + i * 37 + seed * 89) % 101) / 50 - 1;

/** `count` things, joined: `make` is told which one it is. */
export const row = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join("");
