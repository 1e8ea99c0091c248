import { compareText } from "../../domain/compare.ts";
import { held, holdingOf } from "../atoms.ts";
import type { Subject } from "../check.ts";
import { type Clash, clashInItself, clashOfTwo, clashWithClaimed } from "./clash.ts";
import { contradictionsCut } from "./contradictions-cut.ts";
import { minimalClashes } from "./minimal-clashes.ts";
import type { PriceOf } from "./price-of.ts";
import { type WideClashes, type WideSteps, wideClashes } from "./wide-clashes.ts";
import type { PlacedWindows, Window } from "./windows.ts";

/**
 * All clashes at one place: one window in itself or against the claimed years, two windows against each other, two parts that are
 * recorded as separate (E25), and what takes more than two (E27).
 */
export function clashesAt(
  place: number,
  placed: PlacedWindows,
  subject: Subject,
  priceOf: PriceOf,
  steps: WideSteps,
): WideClashes {
  const { windows } = placed;
  const found: Clash[] = subject.piece.separate.map((pair) => separateParts(pair, subject));
  const add = (clash: Clash | undefined): void => {
    if (clash) found.push(clash);
  };
  for (const [i, window] of windows.entries()) {
    add(clashInItself(window));
    add(clashWithClaimed(window, subject));
    for (let j = i + 1; j < windows.length; j++) add(clashOfTwo(window, windows[j] as Window, subject));
  }
  const wide = wideClashes(placed, subject, priceOf, steps);
  found.push(...wide.clashes);
  found.push(...contradictionsCut(place, placed.cut, found, subject));
  return { clashes: minimalClashes(found), cut: wide.cut };
}

function separateParts(pair: Subject["piece"]["separate"][number], { parts }: Subject): Clash {
  const [a, b] = [...pair].sort(compareText) as [(typeof pair)[0], (typeof pair)[1]];
  const originals = [a, b].map((part) => held({ kind: "original", part: parts.groupOf(part) }));
  return {
    held: holdingOf(held({ kind: "separate", parts: [a, b] }), ...originals),
    ...{ hardness: "physical", against: "parts", findings: [], parts: [a, b], gapYears: undefined },
  };
}
