import { dirname } from "node:path";
import { describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { verifyMirror } from "#server/stores/mirror/verify-mirror.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { CHAIN } from "#tests/support/chain-graph.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { runNode } from "#tests/support/run-node.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

async function fill(store: Store): Promise<Store> {
  answered(await store.commit(aCommit(CHAIN)));
  for (let n = 0; n < 25; n++)
    answered(
      await store.commit(
        aCommit(
          adding(aClaim({ id: `claim.n${n}`, relation: "introduced", subject: "tool.saw", when: "1700" })),
        ),
      ),
    );
  return store;
}
const how = { asks: 40, random: Math.random };

describe("the mirror compared on demand", () => {
  it("[S54] holds what the store does, patched and built anew", async () => {
    expect(await verifyMirror(await fill(openMemoryStore()), how)).toEqual({
      ...{ terms: 9, claims: 32, patched: 20, asks: 40 },
    });
    expect(await verifyMirror(openMemoryStore(), how)).toMatchObject({ terms: 0, patched: 0 });
  });

  it.each<[string, (store: Store) => Partial<Store>, RegExp]>([
    [
      "a row that is read otherwise now",
      (store) => ({
        walkBlocks: async function* (at) {
          for await (const block of store.walkBlocks(at))
            if (block.rows !== "exceptions" || at < 26) yield block;
        },
      }),
      /patched from revision 6 to 26/,
    ],
    [
      "a walk of the store that finds less",
      (store) => ({
        neighbourhood: async (ask) => {
          const found = await store.neighbourhood(ask);
          return { ...found, claims: found.claims.slice(1) };
        },
      }),
      /the claims of the walk from/,
    ],
  ])("[S54] refuses %s", async (_, other, message) => {
    const store = await fill(openMemoryStore());
    const found = await verifyMirror({ ...store, ...other(store) }, how);
    expect(isProblem(found) && found.code).toBe("STORE_CORRUPT");
    expect(isProblem(found) && found.message).toMatch(message);
  });

  it("[S54] is a command", async () => {
    const path = temporaryPath();
    const store = await fill(answered(await openSqliteStore(path)));
    await store.close();
    const { ended } = runNode(["server/verify-store.ts", "--mirror"], { SCRIBELINE_DATA: dirname(path) });
    expect(await ended).toMatchObject({
      exit: 0,
      out: "The mirror holds 9 terms and 32 claims as the store does, 20 revisions of it patched; 500 walks at random are answered alike.\n",
    });
  });
});
