import { describe, expect, it } from "vitest";
import { asIntegerProgram, itemsTaken } from "#server/reasoning/mends/as-integer-program.ts";
import { proveOn } from "#server/reasoning/mends/prove-mends.ts";
import { mendsOf } from "#server/reasoning/mends/read-mends.ts";
import { casesOf, cheapestOf } from "#server/reasoning/mends/search.ts";
import { openHighs } from "#server/solver/solve-by-highs.ts";
import { clingoProgram, leastByClingo } from "#tests/oracles/clingo-mends.ts";
import { holds } from "#tests/oracles/slow-mends.ts";
import {
  groundOfInstance,
  type InstanceSize,
  type MendInstance,
  randomInstance,
  USUAL_BUDGET,
  WITHOUT_LIMIT,
  wordOf,
} from "#tests/support/mend-instance.ts";

const SIZE: InstanceSize = {
  ...{ parts: 4, observations: 9, claims: 8, missing: 0.4, second: 0.3, gaps: 0.3, separate: 0 },
};
const instances = (count: number): readonly MendInstance[] =>
  Array.from({ length: count }, (_, n) => randomInstance(n + 1, { ...SIZE, separate: n % 4 }));

function bestOf(instance: MendInstance) {
  const { ground, scene } = groundOfInstance(instance);
  const mends = mendsOf(ground, "physical", scene, USUAL_BUDGET);
  return { ground, scene, mends };
}

describe("the cheapest mend, against solvers", () => {
  it("[M9] costs what clingo says on 60 random pieces", async () => {
    const costs: number[] = [];
    for (const instance of instances(60)) {
      const { mends } = bestOf(instance);
      expect(mends.proved).toBe(true);
      expect(mends.best?.price).toBe(await leastByClingo(clingoProgram(instance)));
      costs.push(mends.best?.price ?? 0);
    }
    expect(new Set(costs).size).toBeGreaterThan(30);
  });

  it("[M9] costs what HiGHS says on 60 others, read back from its answer", async () => {
    const solve = await openHighs();
    for (const instance of instances(120).slice(60)) {
      const { ground, scene, mends } = bestOf(instance);
      const unproved = { ...mends, proved: false, lowerBound: 0, listed: [] };
      const { best: _, ...without } = unproved;
      const proved = proveOn(ground, scene, without, solve, USUAL_BUDGET);
      expect(proved).toMatchObject({ proved: true, lowerBound: mends.best?.price });
      expect(proved.best?.price).toBe(mends.best?.price);
      const names = new Set(proved.best?.givenUp.map(wordOf));
      expect(holds(names, instance)).toBe(true);
    }
  });

  it("[M9] is found alike by the search of states and by the search that lists", () => {
    for (const instance of instances(120)) {
      const { ground, mends } = bestOf(instance);
      const cases = casesOf(ground.puzzles([]), ground.items, [instance.claimed]);
      const { found, atLeast } = cheapestOf(cases, ground.items, WITHOUT_LIMIT.states);
      expect(found?.cost).toBe(atLeast);
      expect(Math.floor((found?.cost ?? 0) / 4096)).toBe(mends.best?.price);
    }
  });

  it("[M9] is left unproved, and bounded, on a budget of one state, and proved by HiGHS after that", async () => {
    const solve = await openHighs();
    const size = { ...SIZE, parts: 12, observations: 40, claims: 14, missing: 0.6 };
    let unproved = 0;
    for (let seed = 1; seed <= 12; seed++) {
      const instance = randomInstance(seed, size);
      const { ground, scene } = groundOfInstance(instance);
      const short = { ...USUAL_BUDGET, states: 1 };
      const mends = mendsOf(ground, "physical", scene, short);
      const best = mendsOf(ground, "physical", scene, USUAL_BUDGET).best?.price ?? Number.NaN;
      expect(mends.lowerBound).toBeLessThanOrEqual(best);
      expect(mends.best?.price).toBeGreaterThanOrEqual(best);
      if (mends.proved) continue;
      unproved++;
      const proved = proveOn(ground, scene, mends, solve, short);
      expect(proved).toMatchObject({ proved: true, lowerBound: best });
      expect(proved.best?.price).toBe(best);
    }
    expect(unproved).toBeGreaterThan(3);
  });

  it("[M9] stays unproved where the solver gives up", () => {
    const instance = randomInstance(3, { ...SIZE, parts: 12, observations: 40, claims: 14, missing: 0.6 });
    const { ground, scene, mends } = bestOf(instance);
    const { best: _, ...without } = { ...mends, proved: false, lowerBound: 0 };
    const given = proveOn(ground, scene, without, () => undefined, USUAL_BUDGET);
    expect(given.proved).toBe(false);
    expect(given.lowerBound).toBeLessThanOrEqual(mends.best?.price ?? 0);
  });
});

describe("a case as an integer program", () => {
  it("[M9] is a program without variables where nothing is at odds", async () => {
    const solve = await openHighs();
    const { ground } = groundOfInstance(randomInstance(1, { ...SIZE, missing: 0, gaps: 0, second: 0 }));
    const [one] = casesOf(ground.puzzles([]), ground.items, [[1755, 1760]]);
    const program = asIntegerProgram(one?.choices ?? [], ground.items);
    const solved = solve(program.text);
    expect(solved && itemsTaken(program, solved)).toEqual([]);
  });
});
