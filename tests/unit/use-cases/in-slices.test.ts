import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { openTurns } from "#server/ports/open-turns.ts";
import { inOneGo, type Steps } from "#server/reasoning/in-one-go.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { placesWithin } from "#server/reasoning/places.ts";
import { drawUpPlan } from "#server/reasoning/plan/draw-up-plan.ts";
import { drawUpSheet } from "#server/reasoning/sheet/draw-up-sheet.ts";
import { readChecks } from "#server/reasoning/sheet/read-checks.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { inSlices } from "#server/use-cases/ask/in-slices.ts";
import { readForm } from "#server/use-cases/ask/read-form.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { largeGraph } from "#tests/support/large-graph.ts";

const large = largeGraph(4_000);
const form =
  large.terms.find(({ kind, parts = [] }) => kind === "form" && parts.length > 1)?.id ?? id("none");
const [region] = large.leafRegions;
const ATTRIBUTION = { form, ...(region ? { region } : {}), date: "1760/1775" };

/** Runs steps with a turn for others after each, who count how often they come. */
async function withOthers<Answer>(steps: Steps<Answer>) {
  let others = 0;
  let isOver = false;
  const come = (): void => {
    others++;
    if (!isOver) setImmediate(come);
  };
  setImmediate(come);
  const answer = await inSlices(steps, () => new Promise((resolve) => setImmediate(resolve)));
  isOver = true;
  return { answer, others };
}

describe("[H8] long reasoning in slices", () => {
  it("lets others come between its steps on a large graph, and says the same as in one go", async () => {
    const store = openMemoryStore();
    answered(await store.commit(aCommit(large.change)));
    const { terms, around } = await readForm(store, ATTRIBUTION, 1);
    const graph = knowGraph(around, ASSUMED);
    const sheet = () => drawUpSheet({ ...ATTRIBUTION, each: 6 }, terms, graph);
    const plan = () => drawUpPlan({ ...ATTRIBUTION, examined: 2026 }, terms, graph, ASSUMED_ODDS);
    const [sheetMade, planMade] = [await withOthers(sheet()), await withOthers(plan())];
    expect(sheetMade.others).toBeGreaterThan(20);
    expect(planMade.others).toBeGreaterThan(20);
    expect(sheetMade.answer.sections.length).toBeGreaterThan(0);
    expect(planMade.answer.items.length).toBeGreaterThan(0);
    expect(sheetMade.answer).toEqual(inOneGo(sheet()));
    expect(planMade.answer).toEqual(inOneGo(plan()));
  });

  it("lets others come after each place where no region is claimed, and says the same as in one go", async () => {
    const store = openMemoryStore();
    answered(await store.commit(aCommit(large.change)));
    const ask = { form, date: ATTRIBUTION.date, each: 6 };
    const { terms, around } = await readForm(store, ask, 1);
    const graph = knowGraph(around, ASSUMED);
    const parts = terms.filter(({ kind }) => kind === "part").map(({ id: part }) => part);
    const places = placesWithin(graph, undefined).length;
    expect(places).toBeGreaterThan(3);
    const checks = await withOthers(readChecks(ask, parts, graph));
    expect(checks.others).toBeGreaterThanOrEqual(parts.length * places);
    const sheet = () => drawUpSheet(ask, terms, graph);
    expect((await withOthers(sheet())).answer).toEqual(inOneGo(sheet()));
  });

  it("gives the turn back after ten milliseconds of work, not after each step, and rests as long as it is told", async () => {
    let time = 0;
    let turns = 0;
    const ticking = (): void => {
      turns++;
      next = setImmediate(ticking);
    };
    let next = setImmediate(ticking);
    const rests: number[] = [];
    const restAfter = (worked: number): number => {
      rests.push(worked);
      return 0;
    };
    const turn = openTurns({ now: () => time, restAfter });
    for (let step = 0; step < 9; step++) {
      await turn();
      time += 4;
    }
    clearImmediate(next);
    // After 12, 24 and no more: 12 left of 36 are not yet asked for.
    expect(rests).toEqual([12, 12]);
    expect(turns).toBe(2);
  });

  it("gives it back sooner where it is told to", async () => {
    let time = 0;
    const worked: number[] = [];
    const restAfter = (milliseconds: number): number => {
      worked.push(milliseconds);
      return 0;
    };
    const turn = openTurns({ slice: 5, now: () => time, restAfter });
    for (const work of [4, 4, 12, 1]) {
      time += work;
      await turn();
    }
    expect(worked).toEqual([8, 12]);
  });
});
