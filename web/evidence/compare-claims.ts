import { canonicalYears, yearsApart, yearsFromJson } from "#server/domain/years.ts";
import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import { claimSpans } from "../shared/years/claim-spans.ts";

/** How two claims of one subject and relation stand to each other. */
export type Comparison =
  /** They can both be true, and speak of the same place. */
  | { readonly kind: "agree" }
  /** No year fits both; `years` lie between them. */
  | { readonly kind: "disagree"; readonly years: number }
  /** Each is meant for another region, form or kind of part. */
  | { readonly kind: "elsewhere" };

type Compared = Pick<ClaimLineFragment, "relation" | "years" | "region" | "form" | "part">;

const sameScope = (a: Compared, b: Compared) =>
  a.region?.id === b.region?.id && a.form?.id === b.form?.id && a.part?.id === b.part?.id;

/** What the date itself leaves open, with its pads: for an event the event, for a span of use the span. */
function datedYears(claim: Compared) {
  const { years } = claim;
  if (!years) return undefined;
  const [begin = null] = years.begin;
  const end = years.end[1] ?? null;
  const first = begin === null ? null : begin - years.padBegin;
  const last = end === null ? null : end + years.padEnd;
  return canonicalYears(yearsFromJson([[first, last]]));
}

/** Compares two claims of one subject and relation by their scope and the years their dates can mean. */
export function compareClaims(a: Compared, b: Compared): Comparison {
  if (!sameScope(a, b)) return { kind: "elsewhere" };
  const [ours, theirs] = [datedYears(a), datedYears(b)];
  if (!ours || !theirs || !claimSpans(a.relation, a.years)) return { kind: "agree" };
  const years = yearsApart(ours, theirs) ?? 0;
  return years === 0 ? { kind: "agree" } : { kind: "disagree", years };
}
