import { describe, expect, it } from "vitest";
import { openStandings, type StandingsOptions } from "#server/again/open-standings.ts";
import { openQueue } from "#server/again/queue.ts";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { type ExaminationId, id } from "#server/domain/ids.ts";
import { problem } from "#server/domain/problem.ts";
import { shiftsBetween } from "#server/domain/shifts.ts";
import { revisionAt } from "#server/ports/revision-at.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const name = (n: number) => id<"examination">(`examination.e${n}`);
const piece = (feature: string) =>
  aPiece({ region: "region.england", observations: [{ id: "o1", part: "bottom", feature }] });
const SAWN = piece("feature.round-saw-marks");
const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const EARLIER = replacing(saw, { ...saw, when: "1740" } as Claim);

/** A store with examinations whose standings are followed write by write. */
async function open(pieces: readonly ReturnType<typeof piece>[], options: Partial<StandingsOptions> = {}) {
  const store = options.store ?? openMemoryStore();
  let minutes = 0;
  const now = () => new Date(Date.UTC(2026, 0, 1, 0, ++minutes)).toISOString();
  answered(await store.commit(aCommit(sawGraph, { at: now() })));
  for (const [n, each] of pieces.entries()) answered(await store.createExamination(name(n), each, now()));
  const logged: unknown[] = [];
  const opened = openStandings({
    ...{ store, log: (line) => logged.push(line), restAfter: () => 0, pause: 5 },
    ...options,
  });
  let told = await store.newestWrite();
  const follow = async () => {
    for (const written of await store.writesAfter(told, 100)) await opened.follow(written);
    told = await store.newestWrite();
  };
  const commit = async (change: Change) => {
    answered(await store.commit(aCommit(change, { at: now() })));
    await follow();
  };
  return { store, opened, commit, follow, now, logged };
}

describe("how stored examinations stand", () => {
  it("[K5] [K7] [K12] each is examined after the start, and after a change that touches it says from what to what", async () => {
    const { opened, commit } = await open([SAWN, piece("feature.gesso")]);
    await opened.settled();
    expect(opened.find(name(0))).toMatchObject({ revision: 1, upToDate: true, since: { revision: 1 } });
    await commit(EARLIER);
    expect(opened.find(name(0))).toMatchObject({ revision: 1, upToDate: false });
    expect(opened.find(name(1))).toMatchObject({ revision: 1, upToDate: true });
    await opened.settled();
    const standing = opened.find(name(0));
    expect(standing).toMatchObject({ revision: 2, upToDate: true, since: { revision: 1 } });
    expect(standing && shiftsBetween(standing.since.verdicts, standing.verdicts)).toEqual({
      findings: [
        {
          id: "o1",
          from: { label: "contradictory", hardness: "physical", direction: "late", gapYears: 15 },
          to: { label: "consistent", certain: true, marginal: false },
        },
      ],
      ruleOuts: {
        came: [],
        went: [
          ...[
            {
              hardness: "physical",
              against: "attribution",
              findings: ["o1"],
              parts: ["bottom"],
              everywhere: true,
            },
          ],
        ],
      },
      parts: [{ part: "bottom", from: "against-hard", to: "for" }],
      states: [
        {
          part: "bottom",
          from: { state: "original", likelihood: "more likely than not", tells: true },
          to: { state: "original", likelihood: "probable", tells: true },
        },
      ],
    });
    await opened.stop();
  });

  it("[K7] begins anew when the record is changed", async () => {
    const { store, opened, commit, follow, now } = await open([SAWN]);
    await commit(EARLIER);
    answered(await store.changeExamination(name(0), 1, SAWN, now()));
    await follow();
    await opened.settled();
    const standing = opened.find(name(0));
    expect(standing).toMatchObject({ version: 2, since: { revision: 2 } });
    expect(standing && shiftsBetween(standing.since.verdicts, standing.verdicts)).toBeUndefined();
    await opened.stop();
  });

  it("[K5] is examined again after a write that changes the graph and another record at once", async () => {
    const { store, opened, now } = await open([SAWN, SAWN]);
    await opened.settled();
    answered(await store.commit(aCommit(EARLIER, { at: now() })));
    answered(await store.changeExamination(name(1), 1, piece("feature.gesso"), now()));
    const [newest] = await store.writesAfter((await store.newestWrite()) - 1, 1);
    if (newest === undefined) throw new Error("There is no write");
    await opened.follow({ ...newest, revision: 2 });
    await opened.settled();
    expect(opened.find(name(0))).toMatchObject({ revision: 2, upToDate: true });
    expect(opened.find(name(1))).toMatchObject({ version: 2, revision: 2, upToDate: true });
    await opened.stop();
  });

  it("[K6] is not examined again where the digest shows that nothing is read otherwise", async () => {
    const { opened, commit } = await open([SAWN]);
    await opened.settled();
    expect(opened.measures()).toMatchObject({ examined: 1, cutOff: 0 });
    // An exception of an exception that is not accepted: its subject was visited, what is read stays.
    const proposed = aClaim({
      ...{ id: "claim.x", relation: "void when", of: "claim.saw", condition: "feature.gesso" },
      status: "proposed",
    });
    await commit(adding(proposed));
    await commit(
      adding(aClaim({ id: "claim.y", relation: "void when", of: "claim.x", condition: "feature.gesso" })),
    );
    await opened.settled();
    expect(opened.measures()).toMatchObject({ examined: 1, cutOff: 1 });
    expect(opened.find(name(0))).toMatchObject({ revision: 3, upToDate: true });
    await opened.stop();
  });

  it("[K8] is examined first where it is looked at most", async () => {
    const order: ExaminationId[] = [];
    const base = openMemoryStore();
    const store: Store = {
      ...base,
      examination: (id, version) => {
        order.push(id);
        return base.examination(id, version);
      },
    };
    const { opened, commit } = await open([SAWN, SAWN, SAWN, SAWN], { store });
    await opened.settled();
    for (const n of [2, 1, 2]) opened.looked(name(n));
    order.length = 0;
    await commit(EARLIER);
    await opened.settled();
    expect(order.slice(0, 2)).toEqual([name(2), name(1)]);
    expect(order.length).toBe(4);
    await opened.stop();
  });

  it("[K8] is left out where there are more than are followed, and is counted", async () => {
    const { opened } = await open([SAWN, SAWN, SAWN], { most: 2 });
    await opened.settled();
    expect(opened.progress()).toEqual({ known: 2, waiting: 0, left: 1 });
    expect([0, 1, 2].filter((n) => opened.find(name(n)) === undefined)).toHaveLength(1);
    await opened.stop();
  });

  it("[K5] is forgotten where it is deleted, and comes back with an undo", async () => {
    const { store, opened, follow, now } = await open([SAWN]);
    await opened.settled();
    answered(await store.deleteExamination(name(0), 1, now()));
    await follow();
    expect(opened.find(name(0))).toBeUndefined();
    answered(await store.undoExamination(name(0), 2, now()));
    await follow();
    await opened.settled();
    expect(opened.find(name(0))).toMatchObject({ version: 3, upToDate: true });
    await opened.stop();
  });

  it("[K5] waits and goes on where the store failed, and says so", async () => {
    const base = openMemoryStore();
    let fails = false;
    const store: Store = {
      ...base,
      neighbourhood: (ask) => {
        if (!fails) return base.neighbourhood(ask);
        fails = false;
        throw new StoreFailed(problem("STORE_UNREACHABLE", "It is away."), undefined);
      },
    };
    const { opened, commit, logged } = await open([SAWN], { store });
    await opened.settled();
    fails = true;
    await commit(EARLIER);
    await opened.settled();
    expect(logged).toMatchObject([{ event: "not examined again", examination: name(0) }]);
    expect(opened.find(name(0))).toMatchObject({ revision: 2, upToDate: true });
    await opened.stop();
  });

  it("[K5] a piece that names what the graph does not know yet can be examined once it does", async () => {
    const { opened, commit } = await open([piece("feature.later")]);
    await opened.settled();
    expect(opened.find(name(0))?.verdicts.fits).toBe(false);
    await commit(adding(aTerm("feature.later")));
    await opened.settled();
    expect(opened.find(name(0))?.verdicts.fits).toBe(true);
    await opened.stop();
  });
});

describe("the revision that stood at a time", () => {
  it("[K7] is the newest that is not later", async () => {
    const store = openMemoryStore();
    const at = (minute: number) => `2026-01-01T00:${String(minute).padStart(2, "0")}:00.000Z`;
    expect(await revisionAt(store, at(1))).toBe(0);
    for (let n = 1; n <= 9; n++)
      answered(await store.commit(aCommit(adding(aTerm(`tool.t${n}`)), { at: at(2 * n) })));
    for (let minute = 1; minute < 30; minute++)
      expect(await revisionAt(store, at(minute))).toBe(Math.min(9, Math.floor(minute / 2)));
  });
});

describe("what waits", () => {
  it("[K8] goes by how much it is wanted, then by when it came", () => {
    const queue = openQueue<string>();
    for (const each of ["a", "b", "c", "d"]) queue.add(each, 0);
    queue.favour("c", 1);
    queue.favour("b", 3);
    queue.favour("z", 9);
    const order = [];
    for (let first = queue.first(); first !== undefined; first = queue.first()) {
      order.push(first);
      queue.remove(first);
    }
    expect(order).toEqual(["b", "c", "a", "d"]);
  });
});
