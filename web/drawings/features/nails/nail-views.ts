import { line, n, type Point, polygon } from "../../pen.ts";
import { body, type Detail, detail, edge, type Mark, says } from "../mark.ts";

/**
 * A nail is drawn in two views side by side, with its head from above and the hole it leaves. Sizes in drawing units,
 * half widths from the axis.
 */
export const NAIL = {
  /** Axes of the two views and of the plan. */
  front: 62,
  side: 128,
  plan: 196,
  head: 40,
  tip: 212,
} as const;

/** Half widths of a shank: under the head and at the point. */
export interface Shank {
  readonly under: number;
  readonly tip: number;
  /** Where the shank comes to its point; at the tip unless said. */
  readonly shoulder?: number;
}

/** The outline of a shank about an axis. */
export function shank(axis: number, { under, tip, shoulder = NAIL.tip }: Shank, from = NAIL.head): string {
  return shoulder === NAIL.tip
    ? polygon([axis - under, from], [axis + under, from], [axis + tip, NAIL.tip], [axis - tip, NAIL.tip])
    : polygon(
        [axis - under, from],
        [axis + under, from],
        [axis + tip, shoulder],
        [axis, NAIL.tip],
        [axis - tip, shoulder],
      );
}

/** A head beaten by hand, seen from above: facets that meet off the middle, no two alike. */
export function roseHead(cx: number, cy: number, r: number, turn = 0): { outline: string; ridges: string } {
  const reach = [1, 0.86, 1.02, 0.9, 0.95];
  const corners = reach.map((share, i): Point => {
    const angle = ((turn + i * 72 + (i % 2 ? 9 : -6)) * Math.PI) / 180;
    return [cx + r * share * Math.cos(angle), cy + r * share * Math.sin(angle)];
  });
  const peak: Point = [cx + r * 0.16, cy - r * 0.12];
  return { outline: polygon(...corners), ridges: corners.map((corner) => line(peak, corner)).join("") };
}

/** Such a head as marks. */
export const headMarks = ({ outline, ridges }: { outline: string; ridges: string }): readonly Mark[] => [
  body(outline, "edge"),
  detail(ridges),
];

/** The same head from the side, over the shank. */
export const roseHeadSide = (axis: number, half: number, uneven = 0): Point[] => [
  [axis - half, NAIL.head],
  [axis - half + 3, NAIL.head - 8 - uneven],
  [axis - 2, NAIL.head - 17],
  [axis + half - 5, NAIL.head - 9 + uneven],
  [axis + half, NAIL.head],
];

/** The hole that a nail leaves, seen from above: half its width and height. */
export const holeMarks = (halfWidth: number, halfHeight: number, level: Detail): readonly Mark[] => {
  const { plan } = NAIL;
  const y = 150;
  return [
    body(
      polygon([plan - 26, y - 26], [plan + 26, y - 26], [plan + 26, y + 26], [plan - 26, y + 26]),
      "detail",
    ),
    ...(level === "full"
      ? [
          detail(
            [-17, -6, 8, 18]
              .map(
                (v) =>
                  `M${n(plan - 24)} ${n(y + v)}H${n(plan - halfWidth - 3)}M${n(plan + halfWidth + 3)} ${n(y + v)}H${n(plan + 24)}`,
              )
              .join(""),
          ),
        ]
      : []),
    { kind: "tone", tone: "dark", d: holeOutline(halfWidth, halfHeight) },
    edge(holeOutline(halfWidth, halfHeight)),
    says(plan, y + 42, "hole"),
  ];
};

const holeOutline = (halfWidth: number, halfHeight: number): string =>
  polygon(
    [NAIL.plan - halfWidth, 150 - halfHeight],
    [NAIL.plan + halfWidth, 150 - halfHeight],
    [NAIL.plan + halfWidth, 150 + halfHeight],
    [NAIL.plan - halfWidth, 150 + halfHeight],
  );
