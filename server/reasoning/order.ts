import type { Hardness } from "../domain/claim.ts";
import { firstDifference } from "../domain/compare.ts";
import type { FindingLabel } from "../domain/report.ts";
import { isEmpty, meet, type Span, type Years, yearsApart } from "../domain/years.ts";

/** What decides the order of findings and of paths (E23). */
export interface Weighed {
  readonly label: FindingLabel | "way-excluded";
  readonly hardness: Hardness | undefined;
  readonly years: Years;
}

/** The years a date can be written in: what is longer counts as this long. */
const WRITABLE: Span = [1, 9999];

/** The weightier first: by label and hardness, empty sets, larger gap, fewer infinite ends, fewer years. */
export function compareWeights(a: Weighed, b: Weighed, claimed: Span): number {
  return firstDifference(
    rank(a) - rank(b),
    Number(isEmpty(b.years)) - Number(isEmpty(a.years)),
    (yearsApart(b.years, [claimed]) ?? 0) - (yearsApart(a.years, [claimed]) ?? 0),
    infiniteEnds(a.years) - infiniteEnds(b.years),
    count(a.years) - count(b.years),
  );
}

function rank({ label, hardness }: Weighed): number {
  if (label === "contradictory") return hardness === "physical" ? 0 : 1;
  return ["way-excluded", "consistent", "silent"].indexOf(label) + 2;
}

const infiniteEnds = (years: Years): number =>
  Number(years[0]?.[0] === Number.NEGATIVE_INFINITY) + Number(years.at(-1)?.[1] === Number.POSITIVE_INFINITY);
const count = (years: Years): number =>
  meet(years, [WRITABLE]).reduce((sum, [first, last]) => sum + last - first + 1, 0);
