import { n, type Point, polygon } from "../../pen.ts";
import { closed, type Run, run, type Step } from "../curves.ts";
import { body, cut, type Mark } from "../mark.ts";
import { swept } from "../oblique.ts";

/** A block cut across in front, so that the waves of its upper surface show in section; the surface goes back. */
export interface Surface {
  readonly profile: Run;
  readonly foot: number;
  readonly back: Point;
}

/** A row of hollows or waves along x: each `width` wide and `depth` deep, meeting in arrises. */
export const hollows = (start: Point, widths: readonly number[], depth: number): Run => {
  let [x] = start;
  const y = start[1];
  const steps = widths.map((width): Step => {
    const from = x;
    x += width;
    return ["c", from + width * 0.3, y + depth * 1.33, from + width * 0.7, y + depth * 1.33, x, y];
  });
  return run(start, ...steps);
};

/** Where the arrises between hollows stand: one more than there are hollows. */
export const arrises = (start: number, widths: readonly number[]): readonly number[] => {
  let x = start;
  return [
    start,
    ...widths.map((width) => {
      x += width;
      return x;
    }),
  ];
};

/** The end of a run without its shape: its last point. */
const endOf = ({ start, steps }: Run): Point => {
  const last = steps.at(-1);
  return last === undefined ? start : last[0] === "c" ? [last[5], last[6]] : [last[1], last[2]];
};

/** The block with its cut front, its right side and its upper surface. */
export function surface({ profile, foot, back: [dx, dy] }: Surface): readonly Mark[] {
  const [ex, ey] = endOf(profile);
  const front = closed(profile, [ex, foot], [profile.start[0], foot]);
  return [
    body(polygon([ex, ey], [ex + dx, ey + dy], [ex + dx, foot + dy], [ex, foot])),
    body(swept(profile, dx, dy)),
    ...cut(front),
  ];
}

/** A line on the surface from the front edge at (x, y) going back. */
export const goingBack = ([x, y]: Point, [dx, dy]: Point, from = 0, to = 1): string =>
  `M${n(x + dx * from)} ${n(y + dy * from)}L${n(x + dx * to)} ${n(y + dy * to)}`;
