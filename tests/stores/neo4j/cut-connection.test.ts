import { afterEach, beforeEach, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { type CuttingProxy, cuttingProxy } from "#tests/support/neo4j/cutting-proxy.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const at = "2026-11-25T10:00:00.000Z";

onNeo4j("a connection that breaks", (server) => {
  let proxy: CuttingProxy;
  let store: Store;
  beforeEach(async () => {
    proxy = await cuttingProxy(server.host);
    store = await server.open(server.address({ host: proxy.host }), { rowsAtOnce: 50 });
  });
  afterEach(async () => {
    await store.close();
    await proxy.close();
  });

  it.each(["before", "after"] as const)(
    "[S42] %s the server has kept a write doubles nothing and loses nothing",
    async (when) => {
      proxy.cutCommits(2, when);
      const first = answered(await store.commit(aCommit(adding(aTerm("tool.saw")), { expected: 0 })));
      expect(first.number).toBe(1);
      expect(proxy.cuts()).toBeGreaterThan(0);
      proxy.cutCommits(1, when);
      const made = answered(await store.createExamination(id("examination.a"), aPiece(), at));
      proxy.cutCommits(1, when);
      const changed = answered(await store.changeExamination(id("examination.a"), 1, aPiece(), at));
      expect([made.version, changed.version]).toEqual([1, 2]);
      expect(await store.newestRevision()).toEqual(first);
      expect((await dumpOf(store)).map(({ kind }) => kind)).toEqual([
        ...["header", "revision", "examination", "examination", "write", "write", "write", "trailer"],
      ]);
      expect(await store.verify()).toEqual({ revisions: 1, head: first.hash });
    },
  );

  it.each(["before", "after"] as const)(
    "[S42] %s a step of a large write was kept doubles nothing",
    async (when) => {
      const terms = Array.from({ length: 220 }, (_, n) => aTerm(`tool.t${n}`));
      proxy.cutCommits(2, when);
      answered(await store.commit(aCommit(adding(...terms))));
      expect(proxy.cuts()).toBe(2);
      expect((await store.listTerms({}, { first: 1 })).total).toBe(220);
      expect(await store.verify()).toMatchObject({ revisions: 1 });
    },
  );

  it("[S11] for good is STORE_UNREACHABLE for reads and writes, within the patience", async () => {
    const where = server.address({ host: proxy.host });
    const hasty = answered(await openNeo4jStore(where, { patience: 300 }));
    answered(await hasty.commit(aCommit(adding(aTerm("tool.saw")))));
    await proxy.close();
    expect(refusedWith(await hasty.commit(aCommit(adding(aTerm("tool.plane")))))).toBe("STORE_UNREACHABLE");
    expect(refusedWith(await hasty.createExamination(id("examination.a"), aPiece(), at))).toBe(
      "STORE_UNREACHABLE",
    );
    const failure = await hasty.newestRevision().catch((error: unknown) => error);
    expect(failure).toBeInstanceOf(StoreFailed);
    expect((failure as StoreFailed).problem.code).toBe("STORE_UNREACHABLE");
    await hasty.close();
    const again = await server.open({ ...where, url: `bolt://${server.host}` });
    expect((await again.listTerms({}, { first: 9 })).rows.map((term) => term.id)).toEqual(["tool.saw"]);
    await again.close();
  });

  it("[S11] while it is being made, after whatever byte, is STORE_UNREACHABLE", async () => {
    for (const from of ["client", "server"] as const)
      for (let after = 0; after < 400; after += 20) {
        proxy.breakOnce({ after, from, how: "cut" });
        const opened = await openNeo4jStore(server.address({ host: proxy.host }), { patience: 300 });
        if (isProblem(opened)) expect(opened.code).toBe("STORE_UNREACHABLE");
        else await opened.close();
      }
    expect(proxy.cuts()).toBeGreaterThan(20);
  });
});
