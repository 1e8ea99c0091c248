import { proveOn } from "#server/reasoning/mends/prove-mends.ts";
import { mendsOf } from "#server/reasoning/mends/read-mends.ts";
import { casesOf, cheapestOf } from "#server/reasoning/mends/search.ts";
import { openHighs } from "#server/solver/solve-by-highs.ts";
import { clingoProgram, leastByClingo } from "#tests/oracles/clingo-mends.ts";
import {
  groundOfInstance,
  type InstanceSize,
  type MendInstance,
  randomInstance,
  USUAL_BUDGET,
} from "#tests/support/mend-instance.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, medians } from "./measure.ts";

const LARGE: InstanceSize = {
  ...{ parts: 40, observations: 200, claims: 120, missing: 0.15, second: 0, gaps: 0.1, separate: 0 },
};
/** As large as clingo answers in seconds. */
const MIDDLING: InstanceSize = { ...LARGE, parts: 16, observations: 80, claims: 48 };
const LARGE_PIECES = 60;
const MIDDLING_PIECES = 4;

const some = (size: InstanceSize, count: number, from = 1): readonly MendInstance[] =>
  Array.from({ length: count }, (_, n) => randomInstance(from + n, size));

/** The cheapest mend, from the windows on. */
function cheapestMend(instance: MendInstance) {
  const { ground } = groundOfInstance(instance);
  return cheapestOf(
    casesOf(ground.puzzles([]), ground.items, [instance.claimed]),
    ground.items,
    USUAL_BUDGET.states,
  );
}

/** Everything that is told of mends at one level: the list, part by part, and if the date may move. */
function allMends(instance: MendInstance) {
  const { ground, scene } = groundOfInstance(instance);
  return { ground, scene, mends: mendsOf(ground, "physical", scene, USUAL_BUDGET) };
}

function timesOf(
  instances: readonly MendInstance[],
  run: (instance: MendInstance) => unknown,
): readonly number[] {
  return instances.map((instance) => {
    const begun = performance.now();
    run(instance);
    return performance.now() - begun;
  });
}

function say(what: string, times: readonly number[], atMost?: number): void {
  sayFigure({
    ...{ what: `${what}, median`, value: quantile(times, 0.5), unit: "ms" },
    ...(atMost === undefined ? {} : { atMost }),
  });
  sayFigure({ what: `${what}, worst`, value: quantile(times, 1), unit: "ms" });
}

/** Mends of 40 parts with 200 windows, 15 % of which miss the claimed years; and against solvers, with the same optimum. */
export const bench: Bench = async () => {
  const large = some(LARGE, LARGE_PIECES);
  timesOf(some(LARGE, 20, 1_000), allMends);
  const what = "40 parts, 200 windows, 15 % violating";
  say(`the cheapest mend, ${what}`, timesOf(large, cheapestMend), 20);
  say(`all that is told of mends at one level, ${what}`, timesOf(large, allMends));
  for (const missing of [0.5, 1]) {
    const harder = some({ ...LARGE, missing }, 8);
    say(`the cheapest mend, the same with ${missing * 100} % violating`, timesOf(harder, cheapestMend));
  }

  const solve = await openHighs();
  for (const instance of large.slice(0, 10)) {
    const { ground, scene, mends } = allMends(instance);
    const { best: _, ...without } = { ...mends, proved: false, lowerBound: 0, listed: [] };
    const { best, proved } = proveOn(ground, scene, without, solve, USUAL_BUDGET);
    if (!mends.proved || !proved || best?.price !== mends.best?.price)
      throw new Error(`mends cost ${mends.best?.price}, by HiGHS ${best?.price}`);
  }
  const middling = some(MIDDLING, MIDDLING_PIECES);
  for (const instance of middling) {
    const [own, clingo] = [
      allMends(instance).mends.best?.price,
      await leastByClingo(clingoProgram(instance)),
    ];
    if (own !== clingo) throw new Error(`mends cost ${own}, by clingo ${clingo}`);
  }
  const cost = await medians(
    middling,
    { rounds: 2, warmUp: 1 },
    { own: allMends, clingo: (instance) => leastByClingo(clingoProgram(instance)) },
  );
  return [
    {
      what: "all that is told of mends at one level, 16 parts, 80 windows, 15 % violating",
      against: "the same optimum by clingo",
      cost: cost.own,
      costAgainst: cost.clingo,
      atMost: 0.1,
    },
  ];
};
