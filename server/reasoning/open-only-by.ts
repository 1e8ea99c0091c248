import type { ClaimId, TermId } from "../domain/ids.ts";
import { ALL_YEARS, isEmpty, join, meet, NO_YEARS, type Span, type Years } from "../domain/years.ts";
import type { Alternative, Bound } from "./bound.ts";
import type { Check } from "./check.ts";
import { yearsAlgebra } from "./years-under.ts";

/**
 * The rival claims that alone keep a consistent finding open (E6): where one of a group by itself would leave the claimed years
 * out, the others of the group are named that by themselves let them in.
 */
export function openOnlyBy(check: Check, claimed: Span): readonly ClaimId[] {
  const groups = new Map<string, Bound>();
  for (const { bounds } of check.views.flatMap((view) => view.reached(check.feature)))
    for (const bound of bounds) if (bound.by === "rivals") groups.set(keyOf(bound), bound);
  const named = new Set<ClaimId>();
  for (const [key, { alternatives }] of groups) {
    const isOpen = (one: Alternative): boolean => !isEmpty(meet(yearsIf(check, key, one), [claimed]));
    const claimsOf = (these: readonly Alternative[]) => new Set(these.flatMap(({ claims }) => claims));
    const open = alternatives.filter(isOpen);
    if (open.length === alternatives.length) continue;
    const shut = claimsOf(alternatives.filter((one) => !open.includes(one)));
    for (const claim of claimsOf(open).difference(shut)) named.add(claim);
  }
  return [...named].sort();
}

const keyOf = ({ held }: Bound): string => held.map(({ key }) => key).join(" ");

/** Usual years over all places if one alternative of a group were the whole truth. */
function yearsIf(
  { feature, views }: { feature: TermId } & Pick<Check, "views">,
  group: string,
  one: Alternative,
): Years {
  const algebra = yearsAlgebra(
    (bound) => (bound.by === "rivals" && keyOf(bound) === group ? one.outer : bound.outer),
    () => true,
  );
  return views
    .map((view) => view.under(algebra)(feature))
    .reduce(join, views.length > 0 ? NO_YEARS : ALL_YEARS);
}
