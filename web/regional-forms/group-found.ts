import type { Relation } from "../shared/apollo/schema-types.graphql.ts";
import { type ClaimYears, claimSpans } from "../shared/years/claim-spans.ts";

interface Found {
  readonly subject: { readonly label: string } | null;
  readonly claims: readonly { readonly relation: Relation; readonly years: ClaimYears | null }[];
}

/** The first year that a date can mean; beyond all years where none is stated. */
const firstYear = ({ claims }: Found): number =>
  Math.min(
    ...claims.map(({ years }) => years?.begin[0] ?? years?.end[1] ?? Number.POSITIVE_INFINITY),
    Number.POSITIVE_INFINITY,
  );

/** Things with a date to draw, the earliest first, and those without one, by name. */
export function splitByDate<Thing extends Found>(found: readonly Thing[]) {
  const isDated = ({ claims }: Thing) =>
    claims.some(({ relation, years }) => claimSpans(relation, years) !== undefined);
  const label = ({ subject }: Thing) => subject?.label ?? "";
  const byLabel = (a: Thing, b: Thing) => label(a).localeCompare(label(b), "en");
  return {
    dated: found.filter(isDated).sort((a, b) => firstYear(a) - firstYear(b) || byLabel(a, b)),
    undated: found.filter((thing) => !isDated(thing)).sort(byLabel),
  };
}
