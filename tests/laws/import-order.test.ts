import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Standing } from "#server/domain/graph-view.ts";
import { namesOf } from "#server/domain/names-of.ts";
import type { ImportIndex } from "#server/importing/import-index.ts";
import { openLook } from "#server/importing/open-look.ts";
import { openPool } from "#server/importing/pool.ts";
import { type ImportLine, readAgain } from "#server/importing/read-import-line.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aTerm } from "#tests/support/build-change.ts";

const RUNS = 400;

const feature = (n: number): string => `feature.t${n}`;
/** A feature that is mistaken for others, given by their numbers; they may be mistaken for it too. */
const lineOf = (n: number, alike: readonly number[]): string => {
  const mistakenFor = alike.map((other) => ({ what: "another", term: feature(other), apart: "Look again." }));
  const looking = { how: "Look.", move: "drawer out", aids: ["lens"], basis: "common practice", mistakenFor };
  return JSON.stringify({
    kind: "term",
    term: { ...aTerm(feature(n)), ...(alike.length > 0 && { looking }) },
  });
};

/** A naming of one another by so many things, by the place of each in a file. */
const anyNaming = fc
  .integer({ min: 1, max: 12 })
  .chain((count) =>
    fc.array(fc.uniqueArray(fc.integer({ min: 0, max: count - 1 }), { maxLength: 3 }), {
      minLength: count,
      maxLength: count,
    }),
  )
  .map((naming) => naming.map((named, n) => named.filter((other) => other !== n)));

/** What can go by then: all of what it names, near and far, has come. */
function comeWhole(naming: readonly (readonly number[])[], come: number): ReadonlySet<string> {
  const reach = (n: number): ReadonlySet<number> => {
    const reached = new Set([n]);
    for (const each of reached) for (const other of naming[each] ?? []) reached.add(other);
    return reached;
  };
  return new Set(
    naming.flatMap((_, n) => (n < come && [...reach(n)].every((each) => each < come) ? [feature(n)] : [])),
  );
}

interface Way {
  readonly index: ImportIndex;
  readonly read: (text: string, line: number) => ImportLine | undefined;
}

/** What is named and has not come by is known of a file that was looked through before; else it is taken to come. */
async function bothWays(texts: readonly string[]): Promise<Readonly<Record<string, Way>>> {
  const [whole, growing] = [
    await openLook(openMemoryStore(), false),
    await openLook(openMemoryStore(), false),
  ];
  for (const text of texts) whole.take(text);
  const lineOf = (id: string): number => growing.index.lineOf(id) ?? Number.POSITIVE_INFINITY;
  return {
    "looked through before": { index: whole.index, read: readAgain },
    "while it is looked through": { index: { ...growing.index, lineOf }, read: (text) => growing.take(text) },
  };
}

describe("[S61] [S75] the order in which things of a file go in", () => {
  it("lets each go once, after what it names or with it, as soon as all of that has come", async () => {
    let together = 0;
    await fc.assert(
      fc.asyncProperty(anyNaming, async (naming) => {
        const texts = naming.map((alike, n) => lineOf(n, alike));
        for (const [way, { index, read }] of Object.entries(await bothWays(texts))) {
          const pool = openPool(index);
          const gone = new Set<string>();
          for (const [at, text] of texts.entries()) {
            const line = read(text, at + 1);
            if (line === undefined) throw new Error(`Line ${at + 1} was refused`);
            for (const group of pool.take(line)) {
              if (group.length > 1) together++;
              for (const { thing } of group) {
                expect(gone.has(thing.id), way).toBe(false);
                gone.add(thing.id);
              }
              for (const each of group)
                for (const { id } of namesOf(each as Standing)) expect(gone.has(id), way).toBe(true);
            }
            expect(gone, way).toEqual(comeWhole(naming, at + 1));
          }
        }
      }),
      { numRuns: RUNS },
    );
    expect(together).toBeGreaterThan(RUNS);
  });

  it("asks of each name a few times only, where every thing comes before what it names", async () => {
    const count = 3000;
    // Each names the next of its kind and the very last.
    const texts = Array.from({ length: count }, (_, n) =>
      lineOf(n, n === count - 1 ? [] : [n + 1, count - 1].slice(0, n + 1 === count - 1 ? 1 : 2)),
    );
    for (const [way, { index, read }] of Object.entries(await bothWays(texts))) {
      let asked = 0;
      const counted = {
        ...index,
        lineOf: (id: string) => {
          asked++;
          return index.lineOf(id);
        },
      };
      const pool = openPool(counted);
      let gone = 0;
      for (const [at, text] of texts.entries())
        for (const group of pool.take(read(text, at + 1) as ImportLine)) gone += group.length;
      expect(gone, way).toBe(count);
      expect(asked, way).toBeLessThan(10 * count);
    }
  });
});
