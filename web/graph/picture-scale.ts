import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { placeOf } from "./claim-marks.ts";
import { widthOf } from "./letters.ts";
import type { PathToDraw, Picture, PictureNode } from "./path-picture.ts";

/** The scale of a picture between two places, px. */
export function pictureScale(
  axis: YearAxis,
  claimed: readonly [Year | null, Year | null],
  left: number,
  right: number,
): Picture["scale"] {
  const onScale = (year: Year) => placeOf({ axis, left, right }, year, "first");
  return {
    left,
    right,
    ticks: axis.ticks.map((year) => ({ year, x: onScale(year) })),
    claimed: [
      claimed[0] === null ? null : onScale(claimed[0]),
      claimed[1] === null ? null : onScale(claimed[1]),
    ],
  };
}

/** What a path ends with: one end for all paths that end with the same claim and say the same of it. */
export const endId = (path: PathToDraw): string =>
  path.end === undefined
    ? `open:${path.terms.map((term) => term.id).join(">")}`
    : `date:${path.end}>${path.endLabel}`;

/** Whether a path ends on the scale; what no year bounds stands before it. */
export const isDated = ({ end, verdict, years }: PathToDraw): boolean =>
  end !== undefined && verdict !== "silent" && (years[0]?.[0] ?? years.at(-1)?.[1] ?? null) !== null;

/** The end of a path at its height: at its first year on the scale, or at `before` it. `below`: its words, px under it. */
export function placeEnd(
  path: PathToDraw,
  y: number,
  axis: YearAxis,
  { left, right }: { readonly left: number; readonly right: number },
  { before, below }: { readonly before: number; readonly below: number },
): PictureNode {
  const base = { id: endId(path), label: path.endLabel, y, verdict: path.verdict };
  if (!isDated(path))
    return { ...base, kind: "open", x: before, words: { x: before + 10, y, align: "start" } };
  const onScale = (year: Year | null) =>
    year === null ? null : placeOf({ axis, left, right }, year, "first");
  const from = onScale(path.years[0]?.[0] ?? null);
  const until = onScale(path.years.at(-1)?.[1] ?? null);
  const x = from ?? until ?? left;
  const isLate = x + widthOf(path.endLabel, "small") > right;
  return {
    ...base,
    ...{ kind: "date", x, span: [from, until] },
    words: { x: isLate ? x + 4 : x - 4, y: y + below, align: isLate ? "end" : "start" },
  };
}

/** Where the line to an end stops: before its mark, or before the scale where a bar without a beginning lies on it. */
export const lineEnd = (end: PictureNode | undefined, left: number): number =>
  end?.span?.[0] === null ? left - 2 : (end?.x ?? left) - 5;
