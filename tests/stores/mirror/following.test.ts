import { describe, expect, it } from "vitest";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { problem } from "#server/domain/problem.ts";
import { followWrites } from "#server/follower/follow-writes.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { mirroredStore } from "#server/stores/mirror/mirrored-store.ts";
import { openMirror } from "#server/stores/mirror/open-mirror.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { CHAIN } from "#tests/support/chain-graph.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { builtMirror, silent } from "#tests/support/mirrored.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const ask: NeighbourhoodAsk = { seeds: [aTerm("feature.mark").id], regions: [], maxDepth: 6 };
const dated = (n: number) =>
  adding(aClaim({ id: `claim.n${n}`, relation: "introduced", subject: "tool.saw", when: `${1700 + n}` }));

/** A store that says which neighbourhoods it was asked for. */
function watched(): { readonly store: Store; readonly asked: NeighbourhoodAsk[] } {
  const store = openMemoryStore();
  const asked: NeighbourhoodAsk[] = [];
  const neighbourhood: Store["neighbourhood"] = (what) => {
    asked.push(what);
    return store.neighbourhood(what);
  };
  return { store: { ...store, neighbourhood }, asked };
}

describe("a mirrored store", () => {
  it("[S51] leaves older revisions, and all asks before the mirror is built, to the store", async () => {
    const { store, asked } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    answered(await store.commit(aCommit(dated(1))));
    const mirror = openMirror(store, { log: silent });
    const mirrored = mirroredStore(store, mirror);
    const before = await mirrored.neighbourhood(ask);
    expect(asked).toHaveLength(1);
    await mirror.built;
    expect(await mirrored.neighbourhood(ask)).toEqual(before);
    expect(await mirrored.neighbourhood({ ...ask, at: 2 })).toEqual(before);
    expect(asked).toHaveLength(1);
    expect((await mirrored.neighbourhood({ ...ask, at: 1 })).revision).toBe(1);
    expect(asked).toHaveLength(2);
    await mirrored.close();
  });

  it("[S51] tells how far the building is", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const told: unknown[] = [];
    const mirror = openMirror(
      {
        ...store,
        walkBlocks: async function* (at) {
          for await (const block of store.walkBlocks(at)) {
            yield block;
            told.push(mirror.status().progress);
          }
        },
      },
      { log: silent },
    );
    expect(mirror.status()).toMatchObject({ isBuilt: false, builds: 0 });
    await mirror.built;
    expect(told).toEqual([
      { terms: 0, claims: 0 },
      { terms: 9, claims: 5 },
      { terms: 9, claims: 5 },
      { terms: 9, claims: 5 },
    ]);
    expect(mirror.status()).toMatchObject({ isBuilt: true, revision: 1, terms: 9, claims: 7, builds: 1 });
    expect(mirror.status().bytes).toBeGreaterThan(100);
    await mirror.stop();
  });

  it("[S52] shows a commit of its own as soon as it has resolved, with what others wrote before it", async () => {
    const { store, asked } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const mirrored = mirroredStore(store, await builtMirror(store));
    answered(await store.commit(aCommit(dated(1))));
    const stale = await mirrored.neighbourhood(ask);
    expect([stale.revision, stale.claims.length]).toEqual([1, 6]);
    answered(await mirrored.commit(aCommit(dated(2))));
    const found = await mirrored.neighbourhood(ask);
    expect(found.revision).toBe(3);
    expect(found.claims.map(({ id }) => id as string)).toEqual(
      expect.arrayContaining(["claim.n1", "claim.n2"]),
    );
    expect(asked).toHaveLength(0);
    expect(found).toEqual(await store.neighbourhood(ask));
    await mirrored.close();
  });

  it("[S52] shows a write of another program once it was handed on, and says its revision", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const mirror = await builtMirror(store);
    for (const n of [1, 2, 3]) answered(await store.commit(aCommit(dated(n))));
    await mirror.follow({ revision: 3 });
    expect((await mirror.neighbourhood(ask))?.revision).toBe(3);
    // Heard of twice, or of an examination: nothing is done.
    await mirror.follow({ revision: 2 });
    expect((await mirror.neighbourhood(ask))?.revision).toBe(3);
    expect(await mirror.neighbourhood({ ...ask, at: 2 })).toBeUndefined();
    expect(await mirror.neighbourhood({ ...ask, at: 4 })).toBeUndefined();
    await mirror.stop();
  });

  it("[S52] is at a write of another program when the follower has reached it", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const mirror = await builtMirror(store);
    const follower = followWrites(store, [mirror.follow], { after: 1, every: 60_000, log: silent });
    for (const n of [1, 2, 3]) answered(await store.commit(aCommit(dated(n))));
    expect(await follower.reach(await store.newestWrite(), 5000)).toBe(true);
    expect(await mirror.neighbourhood(ask)).toEqual(await store.neighbourhood(ask));
    await follower.stop();
    await mirror.stop();
  });

  it("[S52] holds, once built, what was committed while it was being built", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const mirror = openMirror(store, { log: silent });
    const mirrored = mirroredStore(store, mirror);
    answered(await mirrored.commit(aCommit(dated(1))));
    expect((await mirrored.neighbourhood(ask)).revision).toBe(2);
    await mirror.built;
    expect((await mirror.neighbourhood(ask))?.revision).toBe(2);
    await mirrored.close();
  });

  it("[S52] answers at one revision although it is patched while it reads", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    let meanwhile = async (): Promise<void> => {};
    const mirror = await builtMirror({
      ...store,
      claims: async (ids, at) => {
        const found = await store.claims(ids, at);
        const first = meanwhile;
        meanwhile = async () => {};
        await first();
        return found;
      },
    });
    meanwhile = async () => {
      const moved = aTerm("feature.mark", { broader: "feature.gilding" });
      const before = aTerm("feature.mark", { broader: "feature.trace" });
      const change = [{ kind: "term" as const, before, after: moved }, ...dated(1)];
      answered(await store.commit(aCommit(change)));
      await mirror.reach(2);
    };
    const found = await mirror.neighbourhood(ask);
    expect(found?.revision).toBe(2);
    expect(found).toEqual(await store.neighbourhood(ask));
    await mirror.stop();
  });

  it("[S53] is built anew when much was patched, and answers meanwhile", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    const mirror = await builtMirror(store, { mostPatched: 4 });
    const mirrored = mirroredStore(store, mirror);
    for (let n = 0; n < 12; n++) {
      answered(await mirrored.commit(aCommit(dated(n))));
      expect((await mirror.neighbourhood(ask))?.revision).toBe(n + 2);
    }
    await expect.poll(() => mirror.status().builds).toBeGreaterThan(1);
    expect(await mirror.neighbourhood(ask)).toEqual(await store.neighbourhood(ask));
    await mirrored.close();
  });

  it("[S53] is built anew after a restore, its own or another program's", async () => {
    const source = openMemoryStore();
    answered(await source.commit(aCommit(CHAIN)));
    const dump = await dumpOf(source);
    const own = watched();
    const mirror = await builtMirror(own.store);
    const mirrored = mirroredStore(own.store, mirror);
    answered(await mirrored.restore(dump));
    expect((await mirrored.neighbourhood(ask)).claims).toHaveLength(6);
    await mirror.rebuild();
    expect((await mirror.neighbourhood(ask))?.claims).toHaveLength(6);
    await mirrored.close();

    const other = watched();
    const behind = await builtMirror(other.store);
    answered(await other.store.restore(dump));
    await behind.follow({ revision: 1, restored: true });
    expect((await behind.neighbourhood(ask))?.revision).not.toBe(0);
    await behind.rebuild();
    expect((await behind.neighbourhood(ask))?.claims).toHaveLength(6);
    await behind.stop();
  });

  it("[S53] [S11] is given up where the store fails while it is patched, and built again", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    let fails = 0;
    const events: string[] = [];
    const failing: Store = {
      ...store,
      changeAt: async (revision) => {
        if (fails-- > 0) throw new StoreFailed(problem("STORE_UNREACHABLE", "gone"), undefined);
        return store.changeAt(revision);
      },
    };
    const mirror = await builtMirror(failing, { pause: 1, log: ({ event }) => events.push(event) });
    const mirrored = mirroredStore(failing, mirror);
    fails = 2;
    answered(await mirrored.commit(aCommit(dated(1))));
    expect((await mirrored.neighbourhood(ask)).revision).toBe(2);
    await mirror.rebuild();
    expect((await mirror.neighbourhood(ask))?.revision).toBe(2);
    expect(events).toContain("mirror not patched");
    expect(mirror.status()).toMatchObject({ failures: 1, isBuilt: true });
    await mirrored.close();
  });

  it("[S51] ends in the midst of building when it is closed", async () => {
    const { store } = watched();
    answered(await store.commit(aCommit(CHAIN)));
    let isClosed = false;
    const mirror = openMirror(
      {
        ...store,
        walkBlocks: async function* (at) {
          for await (const block of store.walkBlocks(at)) {
            expect(isClosed).toBe(false);
            yield block;
          }
        },
      },
      { log: silent },
    );
    const close = async (): Promise<void> => {
      isClosed = true;
    };
    await mirroredStore({ ...store, close }, mirror).close();
    expect(isClosed).toBe(true);
    await mirror.built;
    expect(mirror.status()).toMatchObject({ isBuilt: false, builds: 0 });
  });
});
