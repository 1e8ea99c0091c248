import type { Hardness } from "../../domain/claim.ts";
import { ALL_YEARS, isEmpty, meet } from "../../domain/years.ts";
import type { Check, Subject } from "../check.ts";
import { findSupport } from "../support.ts";
import { type Clash, clashOf, DATE, originals } from "./clash.ts";
import { heldBy, type Window } from "./windows.ts";

/**
 * What contradicts by itself on proofs that were not kept: of checks with more proofs than that, those whose years miss the claimed
 * ones and that none of the clashes found tells; their support is the clash.
 */
export function contradictionsCut(
  place: number,
  cut: readonly Check[],
  found: readonly Clash[],
  subject: Subject,
): readonly Clash[] {
  const isTold = (check: Check, level: Hardness): boolean =>
    found.some(
      ({ findings, hardness }) =>
        findings.length === 1 &&
        findings[0] === check.id &&
        (level === "practice" || hardness === "physical"),
    );
  return cut.flatMap((check) => {
    if (isTold(check, "physical")) return [];
    const physical = contradictionAt(place, check, "physical", subject);
    if (physical !== undefined) return [physical];
    return isTold(check, "practice") ? [] : (contradictionAt(place, check, "practice", subject) ?? []);
  });
}

function contradictionAt(place: number, check: Check, level: Hardness, subject: Subject): Clash | undefined {
  const { claimed, graph, piece } = subject;
  const views = check.elsewhere ? check.views : check.views.slice(place, place + 1);
  const sets = views.map(
    (view) => view.sets(check.feature)[level === "physical" ? "possible" : "usual"].outer,
  );
  if (sets.some((years) => !isEmpty(meet(years, [claimed])))) return undefined;
  const inItself = sets.every(isEmpty);
  const support = findSupport({ ...check, views }, level, { miss: inItself ? ALL_YEARS : [claimed] });
  const window: Window = {
    ...{ check, part: check.part, years: [], made: [], hardness: level },
    held: heldBy(check, support, piece.attribution, graph),
  };
  if (inItself)
    return clashOf([window], check.part === undefined ? "attribution" : "observation", [], undefined);
  return clashOf([window], "attribution", [DATE, ...originals([window], subject)], undefined);
}
