import { canonicalYears, type Year, yearsApart, yearsFromJson } from "#server/domain/years.ts";
import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import type { ClaimYears } from "../shared/years/claim-spans.ts";

/** How two claims of one subject and relation stand to each other. */
export type Comparison =
  /** They can both be true, and speak of the same place. */
  | { readonly kind: "agree" }
  /** No year fits both; `years` lie between the nearest that each can mean, of a span of use for its end `on`. */
  | { readonly kind: "disagree"; readonly years: number; readonly on?: "beginning" | "end" }
  /** Each is meant for another region, form or kind of part. */
  | { readonly kind: "elsewhere" };

type Compared = Pick<ClaimLineFragment, "relation" | "years" | "region" | "form" | "part">;
type End = readonly [Year | null, Year | null];

const sameScope = (a: Compared, b: Compared) =>
  a.region?.id === b.region?.id && a.form?.id === b.form?.id && a.part?.id === b.part?.id;

/** The years an end can be of, with its pad. */
const beginOf = ({ begin, padBegin }: ClaimYears): End =>
  padded([begin[0] ?? null, begin[1] ?? null], padBegin);
const endOf = ({ end, padEnd }: ClaimYears): End => padded([end[0] ?? null, end[1] ?? null], padEnd);
const padded = ([first, last]: End, pad: Year): End => [
  first === null ? null : first - pad,
  last === null ? null : last + pad,
];

/** Years between two ends; 0 where one year fits both. */
const apart = (a: End, b: End): Year =>
  yearsApart(canonicalYears(yearsFromJson([a])), canonicalYears(yearsFromJson([b]))) ?? 0;

/** Compares two claims of one subject and relation by their scope and the years their dates can mean. */
export function compareClaims(a: Compared, b: Compared): Comparison {
  if (!sameScope(a, b)) return { kind: "elsewhere" };
  if (!a.years || !b.years) return { kind: "agree" };
  switch (a.relation) {
    case "INTRODUCED":
    case "COMMON_FROM":
    case "COMMON_UNTIL":
    case "DISCONTINUED": {
      const years = apart(beginOf(a.years), beginOf(b.years));
      return years === 0 ? { kind: "agree" } : { kind: "disagree", years };
    }
    case "CURRENT":
    case "ACTIVE": {
      const beginning = apart(beginOf(a.years), beginOf(b.years));
      const end = apart(endOf(a.years), endOf(b.years));
      if (beginning === 0 && end === 0) return { kind: "agree" };
      return beginning >= end
        ? { kind: "disagree", years: beginning, on: "beginning" }
        : { kind: "disagree", years: end, on: "end" };
    }
    // Two records, or two spans in which a thing is not found, can both be true.
    default:
      return { kind: "agree" };
  }
}
