import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import type { TermId } from "#server/domain/ids.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { randomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { buildArrays } from "#server/stores/mirror/build-arrays.ts";
import { findDifference } from "#server/stores/mirror/find-difference.ts";
import { openMirror } from "#server/stores/mirror/open-mirror.ts";
import { neighbourhoodReader } from "#server/stores/mirror/read-neighbourhood.ts";
import { rowsOf } from "#server/stores/mirror/rows-of.ts";
import type { WalkArrays } from "#server/stores/mirror/walk-arrays.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { CHAIN } from "#tests/support/chain-graph.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { builtMirror, silent } from "#tests/support/mirrored.ts";

async function chainStore(): Promise<Store> {
  const store = openMemoryStore();
  answered(await store.commit(aCommit(CHAIN)));
  return store;
}

/** Numbers from 0 to 1 that are the same in every run. */
const random = (seed: number): (() => number) => {
  const source = randomSource(seed);
  return () => source.below(2 ** 20) / 2 ** 20;
};

/** What the checker says of arrays; a walk that ends in an error has found them damaged too. */
async function faultIn(arrays: WalkArrays, store: Store, seed = 1): Promise<string | undefined> {
  const reader = neighbourhoodReader(arrays, store, { claims: 9, terms: 9 });
  try {
    const mirror = { neighbourhood: ({ at: _, ...ask }: NeighbourhoodAsk) => reader.read(ask) };
    return (await findDifference(mirror, store, arrays, { asks: 300, random: random(seed) }))?.in;
  } catch (failure) {
    return String(failure);
  }
}

/** Whether any ask of one seed is answered otherwise than by the store: some false rows change no answer. */
async function isAnsweredOtherwise(arrays: WalkArrays, store: Store): Promise<boolean> {
  const reader = neighbourhoodReader(arrays, store, { claims: 9, terms: 9 });
  for (const seed of CHAIN.flatMap(({ kind, after }) => (kind === "term" && after ? [after.id] : [])))
    for (const regions of [[], ["region.england"], ["region.france"], ["region.world"]] as TermId[][])
      for (let maxDepth = 0; maxDepth < 5; maxDepth++) {
        const ask = { seeds: [seed], regions, maxDepth };
        if (!isDeepStrictEqual(await reader.read(ask), await store.neighbourhood(ask))) return true;
      }
  return false;
}

/** Every number of the arrays, and how another is put in its place. */
function numbersOf({ stands, broader, bounds, statements, leads, exceptions }: WalkArrays) {
  const arrays = {
    ...{ stands, broader, bounds, statements: statements.rows, leads: leads.rows },
    ...{ has: exceptions.has, first: exceptions.first, next: exceptions.next },
  };
  return Object.entries(arrays).flatMap(([name, numbers]) =>
    [...numbers.keys()].map((place) => ({ what: `${name}[${place}]`, numbers, place })),
  );
}

describe("the check of a mirror", () => {
  it("[S54] finds nothing in arrays that are right", async () => {
    const store = await chainStore();
    const arrays = await buildArrays(store.walkBlocks(1), 1);
    for (const seed of [1, 2, 3]) expect(await faultIn(arrays, store, seed)).toBeUndefined();
  });

  it("[S54] finds any single number that says something else than it should", async () => {
    const store = await chainStore();
    const sound = await buildArrays(store.walkBlocks(1), 1);
    const missed: string[] = [];
    let found = 0;
    const rows = rowsOf(sound);
    for (const { what, numbers, place } of numbersOf(sound))
      for (const other of [0, 1, 2, 3, 1000, -1]) {
        const right = numbers[place] as number;
        numbers[place] = other;
        if (!isDeepStrictEqual(rowsOf(sound), rows))
          if ((await faultIn(sound, store)) !== undefined) found++;
          else if (await isAnsweredOtherwise(sound, store)) missed.push(`${what} = ${other}`);
        numbers[place] = right;
      }
    expect(missed).toEqual([]);
    expect(found).toBeGreaterThan(100);
  });

  it("[S54] tells of a difference, counts it, and the mirror is built anew", async () => {
    const store = await chainStore();
    const lines: object[] = [];
    let lies = true;
    const lying: Store = {
      ...store,
      // As if a row had been lost while it was read.
      walkBlocks: async function* (at) {
        for await (const block of store.walkBlocks(at))
          if (!(lies && block.rows === "exceptions")) yield block;
      },
    };
    const mirror = openMirror(lying, { log: (line) => lines.push(line), random: random(4) });
    await mirror.built;
    lies = false;
    const difference = await mirror.check(50);
    expect(difference).toMatchObject({ revision: 1, in: "claims" });
    expect(lines).toContainEqual(expect.objectContaining({ level: "error", in: "claims", revision: 1 }));
    await mirror.rebuild();
    expect(mirror.status()).toMatchObject({ isBuilt: true, builds: 2, differences: 1 });
    expect(await mirror.check(50)).toBeUndefined();
    expect(mirror.status()).toMatchObject({ checks: 100, differences: 1, failures: 0 });
    await mirror.stop();
  });

  it("[S54] is not needed to get a right answer from arrays so damaged that a walk fails", async () => {
    const store = await chainStore();
    let isWhole = false;
    const mirror = await builtMirror(
      {
        ...store,
        claims: async (ids, at) => (isWhole ? store.claims(ids, at) : new Map()),
      },
      { log: silent },
    );
    const ask = { seeds: [aTerm("feature.mark").id], regions: [], maxDepth: 6 };
    expect(await mirror.neighbourhood(ask)).toBeUndefined();
    isWhole = true;
    await mirror.rebuild();
    expect(await mirror.neighbourhood(ask)).toEqual(await store.neighbourhood(ask));
    expect(mirror.status()).toMatchObject({ failures: 1, isBuilt: true });
    await mirror.stop();
  });

  it("[S54] compares at the revision of the mirror, whatever was written since", async () => {
    const store = await chainStore();
    const mirror = await builtMirror(store, { random: random(2) });
    answered(
      await store.commit(
        aCommit(adding(aClaim({ id: "claim.6", relation: "introduced", subject: "tool.saw", when: "1777" }))),
      ),
    );
    expect(await mirror.check(50)).toBeUndefined();
    await mirror.stop();
  });
});
