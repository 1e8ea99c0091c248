import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Forced } from "./currency.ts";
import type { LinkedChecks, Placed } from "./link-by-tool.ts";
import type { Factor } from "./model.ts";
import { numbering } from "./numbering.ts";
import { curveIsRight, type Given } from "./right-odds.ts";
import { meanOf, seenOdds } from "./seen-odds.ts";

/**
 * Reads factors: one for each thing looked for, or one for all traces of a tool (docs/method.md). What comes out the same is the same
 * object, whatever the place, the odds and what is taken as right.
 */
export type FactorReader = (
  parts: readonly LinkedChecks[],
  from: {
    readonly graph: KnownGraph;
    readonly odds: AssumedOdds;
    readonly given: Given;
    /** Factors of signs of age, which join the others. */
    readonly aged?: readonly Factor[];
  },
) => readonly Factor[];

export function factorReader(): FactorReader {
  const numberOf = numbering<Float64Array>();
  const arrays = new Map<string, Float64Array>();
  const lists = new Map<string, readonly Factor[]>();
  const kept = (key: readonly unknown[], work: () => Float64Array): Float64Array => {
    const name = key.join(" ");
    const found = arrays.get(name) ?? work();
    arrays.set(name, found);
    return found;
  };
  return (parts, { graph, odds, given, aged = [] }) => {
    const { misread, baseRate, detect, prevalence } = odds;
    const odd = ({ check, currency }: Placed, forced?: Forced): Float64Array => {
      const found = currency(check.feature, forced);
      const right = curveIsRight(found, graph, odds, given);
      const { seen, sureness } = check;
      const key = [numberOf(found.byYear), right, seen, misread[sureness], baseRate, detect, prevalence];
      return kept(key, () => seenOdds(found.byYear, right, check, odds));
    };
    const byTool = ({ tool, traces }: LinkedChecks["linked"][number]): Float64Array => {
      const used = (traces[0] as Placed).currency(tool);
      const right = curveIsRight(used, graph, odds, given);
      const withTool = traces.map((one) => odd(one, { term: tool, to: 1 }));
      const without = traces.map((one) => odd(one, { term: tool, to: 0 }));
      const key = ["tool", numberOf(used.byYear), right, ...withTool.map(numberOf), ...without.map(numberOf)];
      return kept(key, () => mixByUse(used.byYear, right, product(withTool), product(without)));
    };
    const dated = parts.flatMap(({ alone, linked }): Factor[] => [
      ...alone.map((one) => ({ observations: observationsOf([one]), byYear: odd(one) })),
      ...linked.map((one) => ({
        observations: observationsOf(one.traces),
        linkedBy: "tool" as const,
        byYear: byTool(one),
      })),
    ]);
    // A sign of age is told by what it is worth on a new part, on an old one, and when a part is old.
    const ofAge = aged.map(({ byYear, ...rest }) => ({
      ...rest,
      byYear: kept(["aged", byYear[0], byYear.at(-1), odds.ageYears], () => byYear),
    }));
    const factors = [...dated, ...ofAge];
    const name = factors
      .map(({ observations, byYear }) => `${observations.join()} ${numberOf(byYear)}`)
      .join();
    const found = lists.get(name) ?? factors;
    lists.set(name, found);
    return found;
  };
}

const observationsOf = (placed: readonly Placed[]): Factor["observations"] =>
  placed.flatMap(({ check }) => check.observation ?? []).sort();

/** All traces at once: with the tool in use, and without it. */
function mixByUse(
  used: Float64Array,
  right: number,
  withTool: Float64Array,
  without: Float64Array,
): Float64Array {
  const mean = meanOf(used);
  return used.map((value, t) => {
    const inUse = right * value + (1 - right) * mean;
    return inUse * (withTool[t] as number) + (1 - inUse) * (without[t] as number);
  });
}

function product(all: readonly Float64Array[]): Float64Array {
  const [first, ...others] = all as [Float64Array, ...Float64Array[]];
  return first.map((value, t) => others.reduce((so, values) => so * (values[t] as number), value));
}
