import type { Year } from "#server/domain/years.ts";
import type { Relation } from "../apollo/schema-types.graphql.ts";

/** Years of a dated claim as the server gives them: what its begin and its end can be, and their pads. */
export interface ClaimYears {
  readonly begin: readonly (Year | null)[];
  readonly end: readonly (Year | null)[];
  readonly padBegin: Year;
  readonly padEnd: Year;
  readonly doubtful: boolean;
}

export type DrawnSpan = readonly [Year | null, Year | null];

/** What to draw for a claim. */
export interface ClaimSpans {
  /** hold: the thing was there. record: it is recorded once. exclude: it is not found. */
  readonly kind: "hold" | "record" | "exclude";
  /** Under every reading of the date. */
  readonly solid: DrawnSpan | null;
  /** Under some reading. */
  readonly pale: DrawnSpan;
}

const less = (year: Year | null, pad: Year) => (year === null ? null : year - pad);
const more = (year: Year | null, pad: Year) => (year === null ? null : year + pad);

/** What a dated claim says of the years, to be drawn; undefined where it has no date to draw. */
export function claimSpans(relation: Relation, years: ClaimYears | null): ClaimSpans | undefined {
  if (relation === "NOT_FOUND_IN" && years === null)
    return { kind: "exclude", solid: [null, null], pale: [null, null] };
  if (years === null) return undefined;
  const [begin0 = null, begin1 = null] = years.begin;
  const [end0 = null, end1 = null] = years.end;
  const outer: DrawnSpan = [less(begin0, years.padBegin), more(end1, years.padEnd)];
  switch (relation) {
    case "INTRODUCED":
    case "COMMON_FROM":
      return { kind: "hold", solid: [begin1, null], pale: [outer[0], null] };
    case "DISCONTINUED":
    case "COMMON_UNTIL":
      return { kind: "hold", solid: [null, end0], pale: [null, outer[1]] };
    case "ATTESTED":
      return { kind: "record", solid: [begin0, end1], pale: outer };
    case "NOT_FOUND_IN":
      return { kind: "exclude", solid: [begin0, end1], pale: outer };
    default: {
      const meets = begin1 === null || end0 === null || begin1 <= end0;
      return { kind: "hold", solid: meets ? [begin1, end0] : [begin0, end1], pale: outer };
    }
  }
}

/** Every stated year of the spans, for choosing an axis. */
export const yearsDrawn = (spans: ClaimSpans | undefined): readonly (Year | null)[] =>
  spans ? [...(spans.solid ?? []), ...spans.pale] : [];
