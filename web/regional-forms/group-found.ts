import type { Relation } from "../shared/apollo/schema-types.graphql.ts";
import { type ClaimYears, claimSpans } from "../shared/years/claim-spans.ts";

interface Found {
  readonly subject: { readonly label: string } | null;
  readonly claims: readonly { readonly relation: Relation; readonly years: ClaimYears | null }[];
}

type Claimed = Found["claims"][number];

const yearOf = ({ years }: Claimed): number => years?.begin[0] ?? years?.end[1] ?? Number.POSITIVE_INFINITY;

/** Claims in the order of the first years that their dates can mean, those without one last. */
export const byFirstYear = <Claim extends Claimed>(claims: readonly Claim[]): readonly Claim[] =>
  claims.toSorted((a, b) => (yearOf(a) < yearOf(b) ? -1 : yearOf(a) > yearOf(b) ? 1 : 0));

/** The first year that a date can mean; beyond all years where none is stated. */
const firstYear = ({ claims }: Found): number => Math.min(...claims.map(yearOf), Number.POSITIVE_INFINITY);

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
