import { n, type Point, polygon } from "../pen.ts";
import { drift, open, placed, type Run, reversed, row } from "./curves.ts";

/** A point of a box in oblique view: `u` to the right, `v` down, `w` away from us as a share of the depth. */
export type Place = (u: number, v: number, w?: number) => Point;

export const oblique =
  ([x, y]: Point, [dx, dy]: Point): Place =>
  (u, v, w = 0) => [x + u + dx * w, y + v + dy * w];

/** A run drawn out along a vector: the closed surface it sweeps over. */
export function swept(way: Run, dx: number, dy: number): string {
  const back = reversed(placed(way, dx, dy));
  const [, ...rest] = open(back).split(/(?=[LC])/);
  return `${open(way)}L${n(back.start[0])} ${n(back.start[1])}${rest.join("")}z`;
}

/** A broken end: a ragged line from one point to another, closed by nothing. */
export function ragged([x0, y0]: Point, [x1, y1]: Point, teeth = 7, depth = 5): string {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [nx, ny] = [(y1 - y0) / length, -(x1 - x0) / length];
  return row(teeth, (i) => {
    const t = (i + 1) / teeth;
    const out = i === teeth - 1 ? 0 : depth * (i % 2 ? -1 : 1) * (0.55 + 0.45 * Math.abs(drift(i, 7)));
    return `L${n(x0 + (x1 - x0) * t + nx * out)} ${n(y0 + (y1 - y0) * t + ny * out)}`;
  });
}

/** A line of dashes between two points: an edge that is hidden. */
export function dashes([x0, y0]: Point, [x1, y1]: Point, dash = 5): string {
  const count = Math.max(1, Math.round(Math.hypot(x1 - x0, y1 - y0) / (dash * 1.8)));
  return row(count, (i) => {
    const a = i / count;
    const b = a + 0.56 / count;
    return `M${n(x0 + (x1 - x0) * a)} ${n(y0 + (y1 - y0) * a)}L${n(x0 + (x1 - x0) * b)} ${n(y0 + (y1 - y0) * b)}`;
  });
}

/** The three faces of a box that are seen: front, top and right end (`side` 1) or left end (-1). */
export function boxFaces(
  at: Place,
  [u0, v0]: Point,
  [u1, v1]: Point,
  side: -1 | 1 = 1,
): { front: string; top: string; end: string } {
  const end = side === 1 ? u1 : u0;
  return {
    front: polygon(at(u0, v0), at(u1, v0), at(u1, v1), at(u0, v1)),
    top: polygon(at(u0, v0), at(u1, v0), at(u1, v0, 1), at(u0, v0, 1)),
    end: polygon(at(end, v0), at(end, v0, 1), at(end, v1, 1), at(end, v1)),
  };
}
