import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Datings, DatingsAsk } from "#server/domain/datings.ts";
import type { Store } from "#server/ports/store.ts";
import { boundOfClaim } from "#server/reasoning/bound-of-claim.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { mirroredStore } from "#server/stores/mirror/mirrored-store.ts";
import { openMirror } from "#server/stores/mirror/open-mirror.ts";
import { readDatings } from "#server/use-cases/ask/find-datings.ts";
import { type AnyHistory, anyAsk, anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";

/** Features and at most one region, some unknown, with few steps at times. */
const anyDatingsAsk: fc.Arbitrary<DatingsAsk> = fc
  .tuple(anyAsk, fc.constantFrom(1, 3, 10, 2_000), fc.constantFrom(1700, 1789, 1850))
  .map(([{ seeds, regions, maxDepth }, steps, year]) => ({
    ...{ features: [...new Set(seeds)], maxDepth, steps, claimed: [year, year + 10] as const },
    ...(regions[0] === undefined ? {} : { region: regions[0] }),
  }));

async function followed(history: AnyHistory, look: (both: Both) => Promise<void>): Promise<void> {
  const store = openMemoryStore();
  const mirror = openMirror(store, { log: () => {}, checkEvery: 0, boundOf: boundOfClaim });
  await mirror.built;
  const mirrored = mirroredStore(store, mirror);
  for (const change of history.changes) {
    answered(await mirrored.commit(aCommit(change)));
    await look({ store, mirror });
  }
  await mirror.stop();
}
interface Both {
  readonly store: Store;
  readonly mirror: ReturnType<typeof openMirror>;
}

describe("ways to dates read off the mirror", () => {
  it("[S70] are those of the neighbourhood, in its order, after each change", async () => {
    let [paths, cut, out] = [0, 0, 0];
    await fc.assert(
      fc.asyncProperty(
        anyHistory,
        fc.array(anyDatingsAsk, { minLength: 1, maxLength: 5 }),
        async (history, asks) => {
          await followed(history, async ({ store, mirror }) => {
            for (const ask of asks) {
              const expected: Datings = await readDatings({ store, datings: undefined }, ask);
              expect(await mirror.datings(ask)).toEqual(expected);
              const all = expected.features.flatMap((feature) => feature.paths);
              paths += all.length;
              out += all.filter(({ isOut }) => isOut).length;
              cut += Number(expected.isCut);
            }
          });
        },
      ),
      { numRuns: 150 },
    );
    expect(Math.min(paths, cut, out, paths - out)).toBeGreaterThan(3);
  });

  it("[S70] ask the store for no claim that was read lately", async () => {
    const store = openMemoryStore();
    let reads = 0;
    const counted: Store = {
      ...store,
      claims: (...ask) => {
        reads++;
        return store.claims(...ask);
      },
    };
    const mirror = openMirror(counted, { log: () => {}, checkEvery: 0, boundOf: boundOfClaim });
    await mirror.built;
    const [mark, saw] = [aTerm("feature.mark"), aTerm("tool.saw")];
    const needs = aClaim({ id: "claim.1", relation: "requires", subject: mark.id, ways: [[saw.id]] });
    const begins = aClaim({ id: "claim.2", relation: "introduced", subject: saw.id, when: "1790" });
    answered(await store.commit(aCommit(adding(mark, saw, needs, begins))));
    await mirror.reach(1);
    const ask: DatingsAsk = { features: [mark.id], claimed: [1700, 1710], maxDepth: 8, steps: 2_000 };
    const first = await mirror.datings(ask);
    expect(first?.features).toEqual([
      {
        ...{ feature: mark.id, label: "contradictory" },
        paths: [{ via: [needs.id], dated: begins.id, isOut: true }],
      },
    ]);
    const before = reads;
    expect(before).toBe(1);
    expect(await mirror.datings(ask)).toEqual(first);
    expect(reads).toBe(before);
    await mirror.stop();
  });
});
