import { compareText } from "../domain/compare.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { SetAside } from "../domain/report.ts";
import type { Check } from "./check.ts";

/** What says most about why a claim counts for nothing, where it is for several reasons at several places. */
const TELLING: readonly SetAside["reason"][] = ["defeated", "overridden", "open-list", "out-of-scope"];

/** Claims met on the way from a check that count for nothing at any of its places, but for those that a support uses anyway. */
export function claimsSetAside({ feature, views }: Check, used: readonly ClaimId[]): readonly SetAside[] {
  const counting = new Set<ClaimId>(used);
  const aside = new Map<ClaimId, SetAside>();
  for (const { setAside, boundBy, lists, endless } of views.flatMap((view) => view.reached(feature))) {
    for (const claim of boundBy.keys()) counting.add(claim);
    for (const { claim } of lists) counting.add(claim.id);
    for (const { id } of endless) counting.add(id);
    for (const [claim, found] of setAside) {
      const before = aside.get(claim);
      if (!before || TELLING.indexOf(found.reason) < TELLING.indexOf(before.reason)) aside.set(claim, found);
    }
  }
  return [...aside.values()]
    .filter(({ claim }) => !counting.has(claim))
    .sort((a, b) => compareText(a.claim, b.claim));
}
