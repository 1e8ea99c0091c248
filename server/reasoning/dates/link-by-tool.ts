import { compareText, firstDifference } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Check } from "../check.ts";
import type { View } from "../view.ts";
import type { CurrencyOf } from "./currency.ts";
import { toolsBehind } from "./tools-behind.ts";

/** A check with the one view it is seen from, and the curves there. */
export interface Placed {
  readonly check: Check;
  readonly view: View;
  readonly currency: CurrencyOf;
}

/** The checks of one part, sorted by what they share. */
export interface LinkedChecks {
  readonly alone: readonly Placed[];
  readonly linked: readonly { readonly tool: TermId; readonly traces: readonly Placed[] }[];
}

/**
 * Sorts the checks of one part by the tools that two or more of them come from; the tool with most traces takes them first, then by
 * id. What was not looked for, or could not be seen, is left out.
 */
export function linkByTool(placed: readonly Placed[]): LinkedChecks {
  const looked = placed.filter(({ check }) => check.seen !== "unseen" && check.observation !== undefined);
  const traces = new Map<TermId, Placed[]>();
  for (const one of looked)
    for (const tool of toolsBehind(one.check.feature, one.view)) {
      const known = traces.get(tool);
      if (known) known.push(one);
      else traces.set(tool, [one]);
    }
  const order = [...traces].sort(([a, x], [b, y]) => firstDifference(y.length - x.length, compareText(a, b)));
  const taken = new Set<Placed>();
  const linked = order.flatMap(([tool, all]) => {
    const left = all.filter((one) => !taken.has(one));
    if (left.length < 2) return [];
    for (const one of left) taken.add(one);
    return [{ tool, traces: left }];
  });
  return { alone: looked.filter((one) => !taken.has(one)), linked };
}
