import { compareText, firstDifference } from "../../domain/compare.ts";
import type { TermId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check } from "../check.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { View } from "../view.ts";
import type { Currency, Forced } from "./currency.ts";
import type { Factor } from "./model.ts";
import { curveIsRight, type Given } from "./right-odds.ts";
import { seenOdds } from "./seen-odds.ts";
import { toolsBehind } from "./tools-behind.ts";

/** A check with the one view it is seen from, and the curves there. */
export interface Placed {
  readonly check: Check;
  readonly view: View;
  readonly currency: (term: TermId, forced?: Forced) => Currency;
}

/**
 * The factors of one part: one for each thing looked for, or one for all traces of a tool (docs/method.md). Tools are those
 * that stand in every way of a closed list of two or more of the features.
 */
export function factorsOf(
  placed: readonly Placed[],
  graph: KnownGraph,
  odds: AssumedOdds,
  given: Given,
): readonly Factor[] {
  const looked = placed.filter(({ check }) => check.seen !== "unseen" && check.observation !== undefined);
  const odd = ({ check, currency }: Placed, forced?: Forced): Float64Array => {
    const found = currency(check.feature, forced);
    return seenOdds(found.byYear, curveIsRight(found, graph, odds, given), check, odds);
  };
  const linked = linkByTool(looked);
  const alone = looked.filter((one) => !linked.some(({ traces }) => traces.includes(one)));
  return [
    ...alone.map((one): Factor => ({ observations: observationsOf([one]), byYear: odd(one) })),
    ...linked.map(({ tool, traces }): Factor => {
      const used = (traces[0] as Placed).currency(tool);
      const right = curveIsRight(used, graph, odds, given);
      const mean = used.byYear.reduce((sum, value) => sum + value, 0) / used.byYear.length;
      const withTool = product(traces.map((one) => odd(one, { term: tool, to: 1 })));
      const without = product(traces.map((one) => odd(one, { term: tool, to: 0 })));
      return {
        observations: observationsOf(traces),
        linkedBy: "tool",
        byYear: used.byYear.map((value, t) => {
          const inUse = right * value + (1 - right) * mean;
          return inUse * (withTool[t] as number) + (1 - inUse) * (without[t] as number);
        }),
      };
    }),
  ];
}

const observationsOf = (placed: readonly Placed[]): Factor["observations"] =>
  placed.flatMap(({ check }) => check.observation ?? []).sort();

function product(all: readonly Float64Array[]): Float64Array {
  const [first, ...others] = all as [Float64Array, ...Float64Array[]];
  return first.map((value, t) => others.reduce((so, values) => so * (values[t] as number), value));
}

/** Tools with two or more traces; the tool with most traces takes them first, then by id. */
function linkByTool(
  looked: readonly Placed[],
): readonly { readonly tool: TermId; readonly traces: readonly Placed[] }[] {
  const traces = new Map<TermId, Placed[]>();
  for (const one of looked)
    for (const tool of toolsBehind(one.check.feature, one.view)) {
      const known = traces.get(tool);
      if (known) known.push(one);
      else traces.set(tool, [one]);
    }
  const order = [...traces].sort(([a, x], [b, y]) => firstDifference(y.length - x.length, compareText(a, b)));
  const taken = new Set<Placed>();
  return order.flatMap(([tool, all]) => {
    const left = all.filter((one) => !taken.has(one));
    if (left.length < 2) return [];
    for (const one of left) taken.add(one);
    return [{ tool, traces: left }];
  });
}
