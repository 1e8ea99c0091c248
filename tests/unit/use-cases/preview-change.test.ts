import { describe, expect, it } from "vitest";
import { keepResults } from "#server/again/keep-results.ts";
import { openStandings } from "#server/again/open-standings.ts";
import { id } from "#server/domain/ids.ts";
import { LOCAL_CALLER } from "#server/domain/people/caller.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { foreseeImpact, type Impact } from "#server/use-cases/ask/foresee-impact.ts";
import { previewChange } from "#server/use-cases/ask/preview-change.ts";
import { aCommit, withdrawing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after;
const sawn = aPiece({
  region: "region.england",
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});

const byId = <One extends { readonly examination: { readonly id: string } }>(all: readonly One[]) =>
  [...all].sort((a, b) => (a.examination.id < b.examination.id ? -1 : 1));

/** Three pieces that a change can touch, and the change. */
async function openThree() {
  const store = openMemoryStore();
  answered(await store.commit(aCommit(sawGraph)));
  for (const name of ["a", "b", "c"])
    answered(await store.createExamination(id(`examination.${name}`), sawn, "2026-01-01T00:00:00Z"));
  const standings = openStandings({ store, log: () => {}, restAfter: () => 0 });
  await standings.settled();
  return { ports: { store, standings }, change: withdrawing(saw as never) };
}

describe("the preview of a change", () => {
  it("[K10] [J4] counts the pieces it looked at, and those that it found, from none to all", async () => {
    const { ports, change } = await openThree();
    const counts: (readonly [number, number, number])[] = [];
    const preview = await previewChange(ports, change, { onLooked: (...count) => counts.push(count) });
    expect(counts).toEqual([0, 1, 2, 3].map((looked) => [looked, 3, looked]));
    expect(preview).toMatchObject({ looked: 3, left: 0 });
    expect(preview.shifted).toHaveLength(3);
    await ports.standings.stop();
  });

  it("[K10] goes on after those that were looked at, and finds in parts what it finds at once", async () => {
    const { ports, change } = await openThree();
    const whole = await previewChange(ports, change);
    const stop = new AbortController();
    const first = await previewChange(ports, change, {
      stop: stop.signal,
      onLooked: (looked) => looked === 1 && stop.abort(),
    });
    const counts: (readonly [number, number, number])[] = [];
    const rest = await previewChange(ports, change, {
      after: first.reached,
      onLooked: (...count) => counts.push(count),
    });
    expect([first.looked, first.left, rest.looked, rest.left]).toEqual([1, 2, 2, 0]);
    expect(byId([...first.shifted, ...rest.shifted])).toEqual(whole.shifted);
    expect(first.shifted).toHaveLength(1);
    expect(counts.at(-1)).toEqual([3, 3, 2]);
    await ports.standings.stop();
  });

  it("[K10] [J4] is told after two seconds as far as it is, and looks at one piece at least each time", async () => {
    const { ports, change } = await openThree();
    let time = 0;
    const options = { now: () => (time += 3000) };
    const asking = { ...ports, results: keepResults(), caller: LOCAL_CALLER };
    const goes: Impact[] = [];
    for (let go = 0; go < 3; go++)
      goes.push(await foreseeImpact(asking, change, 5, { ...options, after: goes.at(-1)?.reached }));
    expect(goes.map(({ looked, left, movedCount }) => [looked, left, movedCount])).toEqual([
      [1, 2, 1],
      [1, 1, 1],
      [1, 0, 1],
    ]);
    const names = goes.flatMap(({ moved }) => moved.map(({ examination }) => examination.id));
    expect(names.sort()).toEqual(["a", "b", "c"].map((name) => `examination.${name}`));
    const whole = await foreseeImpact(asking, change, 5);
    expect([whole.looked, whole.left, whole.movedCount]).toEqual([3, 0, 3]);
    expect(whole.moved.map(({ words }) => words)).toEqual(
      goes.flatMap(({ moved }) => moved.map(({ words }) => words)),
    );
    expect(goes[0]?.disagreements).toEqual(whole.disagreements);
    await ports.standings.stop();
  });

  it("[K10] ends where it is stopped, and says how many it left", async () => {
    const { ports, change } = await openThree();
    const stop = new AbortController();
    const preview = await previewChange(ports, change, {
      stop: stop.signal,
      onLooked: (looked) => looked === 2 && stop.abort(),
    });
    expect(preview).toMatchObject({ looked: 2, left: 1 });
    await ports.standings.stop();
  });
});
