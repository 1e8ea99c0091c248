import type { Dated } from "../../domain/claim.ts";
import { isNarrower, scopeKey } from "../../domain/scope.ts";
import type { Year } from "../../domain/years.ts";
import type { Evidence } from "./evidence.ts";
import { finiteYears } from "./finite-years.ts";
import type { Disagreement, RuleId } from "./rule.ts";

/**
 * Pairs of an `introduced` claim and a claim that disputes it by having the thing there earlier, in the same or a narrower scope:
 * the latest year by which it was there lies before the earliest year of its introduction, both dates taken loosely.
 */
export function beforeIntroduced(
  rule: RuleId,
  evidence: Evidence,
  disputes: (earlier: Dated, introduced: Dated) => boolean,
): readonly Disagreement[] {
  return [...evidence.dated].flatMap(([term, claims]) => {
    const introduced = claims.filter(({ relation }) => relation === "introduced");
    return introduced.flatMap((wide) =>
      claims
        .filter((near) => disputes(near, wide) && isSameOrNarrower(near, wide, evidence))
        .map((near) => ({ near, years: firstYear(wide, evidence) - lastYear(near, evidence) }))
        .filter(({ years }) => years > 0)
        .map(({ near, years }) => ({
          id: `${rule}:${near.id}:${wide.id}`,
          ...{ rule, term, claims: [near.id, wide.id] },
          ...(near.scope.region === undefined ? {} : { region: near.scope.region }),
          ...finiteYears(years),
        })),
    );
  });
}

const isSameOrNarrower = (near: Dated, wide: Dated, { broader }: Evidence): boolean =>
  scopeKey(near.scope) === scopeKey(wide.scope) || isNarrower(near.scope, wide.scope, broader);

/** The earliest year in which it can have come in. */
const firstYear = (claim: Dated, { yearsOf }: Evidence): Year => yearsOf(claim).existsFrom.outer;
/** The latest year by which it was there, whatever the date means. */
const lastYear = (claim: Dated, { yearsOf }: Evidence): Year => yearsOf(claim).existsFrom.inner;
