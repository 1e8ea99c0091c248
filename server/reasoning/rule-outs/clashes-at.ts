import type { Hardness } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import { ALL_YEARS, isEmpty, meet } from "../../domain/years.ts";
import { held, holdingOf } from "../atoms.ts";
import type { Subject } from "../check.ts";
import { findSupport } from "../support.ts";
import { type Clash, clashInItself, clashOf, clashOfTwo, clashWithClaimed } from "./clash.ts";
import { minimalClashes } from "./minimal-clashes.ts";
import { heldBy, type Window } from "./windows.ts";

/**
 * All clashes at one place that the pair method finds (E25): one window in itself or against the claimed years, two windows
 * against each other, two parts that are recorded as separate. Whatever contradicts by itself is among them, with gaps or not.
 */
export function clashesAt(place: number, windows: readonly Window[], subject: Subject): readonly Clash[] {
  const { claimed, piece } = subject;
  const found: Clash[] = piece.separate.map(separateParts);
  const add = (clash: Clash | undefined): void => {
    if (clash) found.push(clash);
  };
  for (const [i, window] of windows.entries()) {
    add(clashInItself(window, piece.examined));
    add(clashWithClaimed(window, claimed));
    for (let j = i + 1; j < windows.length; j++) add(clashOfTwo(window, windows[j] as Window, subject));
  }
  for (const level of ["physical", "practice"] as const)
    found.push(...contradictionsMissed(place, level, found, subject));
  return minimalClashes(found);
}

function separateParts(parts: readonly [Clash["parts"][number], Clash["parts"][number]]): Clash {
  const [a, b] = [...parts].sort(compareText) as [(typeof parts)[0], (typeof parts)[1]];
  const originals = [held({ kind: "original", part: a }), held({ kind: "original", part: b })];
  return {
    held: holdingOf(held({ kind: "separate", parts: [a, b] }), ...originals),
    ...{ hardness: "physical", against: "parts", findings: [], parts: [a, b], gapYears: undefined },
  };
}

/** Checks whose years miss the claimed ones by more than two windows together: their support is the clash. */
function contradictionsMissed(
  place: number,
  level: Hardness,
  found: readonly Clash[],
  { checks, claimed, graph, piece }: Subject,
): readonly Clash[] {
  return checks.flatMap((check) => {
    const views = check.elsewhere ? check.views : check.views.slice(place, place + 1);
    const sets = views.map(
      (view) => view.sets(check.feature)[level === "physical" ? "possible" : "usual"].outer,
    );
    if (check.seen !== "present" || sets.some((years) => !isEmpty(meet(years, [claimed])))) return [];
    const known = found.some(
      ({ findings, hardness }) =>
        findings.length === 1 &&
        findings[0] === check.id &&
        (level === "practice" || hardness === "physical"),
    );
    if (known) return [];
    const inItself = sets.every(isEmpty);
    const support = findSupport({ ...check, views }, level, { miss: inItself ? ALL_YEARS : [claimed] });
    const window: Window = {
      ...{ check, part: check.part, years: [], hardness: level },
      held: heldBy(check, support, piece.attribution, graph),
    };
    if (inItself)
      return [clashOf([window], check.part === undefined ? "attribution" : "observation", [], undefined)];
    const originals = check.part === undefined ? [] : [held({ kind: "original", part: check.part })];
    return [clashOf([window], "attribution", [held({ kind: "attr", of: "date" }), ...originals], undefined)];
  });
}
