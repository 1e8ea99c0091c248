import { describe, expect, it } from "vitest";
import { openStandings } from "#server/again/open-standings.ts";
import { id } from "#server/domain/ids.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
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
