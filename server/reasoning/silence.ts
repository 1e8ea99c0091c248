import type { ClaimId, TermId } from "../domain/ids.ts";
import type { SilenceReason } from "../domain/report.ts";
import { isAllYears } from "../domain/years.ts";
import type { Check } from "./check.ts";
import type { View } from "./view.ts";

/** One cause of a silence: a term that is not bounded, and the claim that fails to bound it, if there is one. */
export interface Silence {
  readonly reason: SilenceReason;
  readonly term: TermId;
  readonly claim?: ClaimId;
}

const IN_ORDER: readonly SilenceReason[] = [
  "defeated",
  "out-of-scope",
  "overridden",
  "open-list",
  "unknown-end",
  "undated",
];

/** Why a check whose usual years are all years says nothing (E17): every cause at every place, the first reason first. */
export function causesOfSilence({ feature, views }: Check): readonly Silence[] {
  const causes = new Map<string, Silence>();
  for (const view of views)
    if (isAllYears(view.sets(feature).usual.outer))
      for (const cause of causesAt(view, feature))
        causes.set(`${cause.reason} ${cause.term} ${cause.claim ?? ""}`, cause);
  return [...causes.values()].sort((a, b) => IN_ORDER.indexOf(a.reason) - IN_ORDER.indexOf(b.reason));
}

/** Follows the unbounded ways of unbounded lists down to what leaves them so. */
function causesAt(view: View, feature: TermId): readonly Silence[] {
  const causes: Silence[] = [];
  const terms = new Set<TermId>([feature]);
  for (const term of terms) {
    const { setAside, endless, lists } = view.resolve(term);
    const own: Silence[] = [
      ...[...setAside.values()].map(({ claim, reason }) => ({ reason, term, claim })),
      ...endless.map(({ id }) => ({ reason: "unknown-end" as const, term, claim: id })),
    ];
    const needed = lists
      .flatMap(({ claim }) => claim.ways)
      .filter((way) => way.every((one) => isAllYears(view.sets(one).usual.outer)))
      .flat();
    if (own.length === 0 && lists.length === 0) own.push({ reason: "undated", term });
    causes.push(...own);
    for (const one of needed) terms.add(one);
  }
  return causes.length > 0 ? causes : [{ reason: "undated", term: feature }];
}
