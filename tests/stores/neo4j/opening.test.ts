import { expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import type { Written } from "#server/domain/written.ts";
import { openData } from "#server/open-data.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { MIGRATIONS } from "#server/stores/neo4j/migrations.ts";
import type { Neo4jAddress } from "#server/stores/neo4j/neo4j-address.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { asVersionOne } from "#tests/support/as-version-one.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { makeNew } from "#tests/support/neo4j/make-new.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { plainWrites } from "#tests/support/plain-writes.ts";
import { dumpOf } from "#tests/support/read-all.ts";

onNeo4j("opening a store on a Neo4j server", (server) => {
  const refusal = async (address: Neo4jAddress, readOnly = false) => {
    const opened = await openNeo4jStore(address, { patience: 300, readOnly });
    if (!isProblem(opened)) throw new Error("It opened");
    return opened;
  };

  it.each(["bolt", "neo4j", "bolt+ssc", "neo4j+ssc"])(
    "[S43] takes the scheme %s: without and with TLS, one server or a routing table",
    async (scheme) => {
      const address = server.address({ scheme });
      const store = await server.open(address);
      answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
      expect((await store.listTerms({}, { first: 5 })).total).toBe(1);
      await store.close();
      const again = await server.open({ ...address, url: `bolt://${server.host}` });
      expect((await again.newestRevision())?.number).toBe(1);
      await again.close();
    },
  );

  it("[S43] refuses a certificate that vouches for itself where one is asked for that does not", async () => {
    expect((await refusal(server.address({ scheme: "bolt+s" }))).code).toBe("STORE_UNREACHABLE");
  });

  it("[S43] with a wrong password is refused, and neither password is told", async () => {
    const refused = await refusal({ ...server.address(), password: "not-the-password" });
    expect(refused.code).toBe("STORE_UNREACHABLE");
    expect(refused.message).toMatch(/check user and password/);
    expect(refused.message).not.toMatch(/not-the-password/);
  });

  it("[S43] is refused where no server answers, or none has such a database", async () => {
    expect((await refusal(server.address({ host: "127.0.0.1:9" }))).code).toBe("STORE_UNREACHABLE");
    expect((await refusal({ ...server.address(), database: "another" })).code).toBe("STORE_UNREACHABLE");
  });

  it("[S43] keeps several stores of one database apart", async () => {
    const [one, two] = [await server.open(), await server.open()];
    answered(await one.commit(aCommit(adding(aTerm("tool.saw")))));
    answered(await two.commit(aCommit(adding(aTerm("tool.saw", { note: "Other." })))));
    answered(await two.createExamination("examination.a" as never, aPiece(), "2026-11-25T10:00:00.000Z"));
    expect((await one.listTerms({}, { first: 5 })).rows).toEqual([aTerm("tool.saw")]);
    expect((await one.listExaminations({ first: 5 })).total).toBe(0);
    expect(await one.verify()).toMatchObject({ revisions: 1 });
    await one.close();
    await two.close();
  });

  it("[S43] to read only makes nothing, writes nothing and sees what others write", async () => {
    const address = server.address();
    expect((await refusal(address, true)).code).toBe("STORE_UNREACHABLE");
    expect(await server.run("MATCH (s:Store {name: $store}) RETURN s", { store: address.store })).toEqual([]);
    const writer = await server.open(address);
    const reader = answered(await openNeo4jStore(address, { readOnly: true }));
    answered(await writer.commit(aCommit(adding(aTerm("tool.saw")))));
    expect((await reader.terms(["tool.saw" as never])).size).toBe(1);
    expect(refusedWith(await reader.commit(aCommit(adding(aTerm("tool.plane")))))).toBe("STORE_LOCKED");
    expect(refusedWith(await reader.restore([]))).toBe("STORE_LOCKED");
    expect(await writer.newestRevision()).toMatchObject({ number: 1 });
    await reader.close();
    await writer.close();
  });

  it("[S19] [S43] refuses the database of a later version, and one of another program, and touches neither", async () => {
    await (await server.open()).close();
    await server.run("CREATE (:ScribelineMigration {number: 99})");
    expect((await refusal(server.address())).code).toBe("OTHER_VERSION");
    await server.run("MATCH (m:ScribelineMigration {number: 99}) DELETE m");

    await server.run("MATCH (m:ScribelineMigration) SET m:Aside REMOVE m:ScribelineMigration");
    const before = await server.run("MATCH (n) RETURN count(n) AS count");
    expect((await refusal(server.address())).code).toBe("WRONG_FORMAT");
    expect(await server.run("MATCH (n) RETURN count(n) AS count")).toEqual(before);
    await server.run("MATCH (m:Aside) SET m:ScribelineMigration REMOVE m:Aside");
    await (await server.open()).close();
  });

  it("[S47] [S68] says of the first write of an earlier version whether it was a restore, and chains it", async () => {
    const filled = openMemoryStore();
    answered(await filled.createExamination("examination.a" as never, aPiece(), "2026-11-25T10:00:00.000Z"));
    const [onlyPieces, committed, both] = [server.address(), server.address(), server.address()];
    const kept = new Map<string, readonly Written[]>();
    const keep = async (address: Neo4jAddress, write: (store: Store) => Promise<object>) => {
      const store = await server.open(address);
      answered<object>(await write(store));
      kept.set(address.store, await store.writesAfter(0, 9));
      await store.close();
    };
    const old = async () => asVersionOne(await dumpOf(filled));
    await keep(onlyPieces, async (store) => store.restore(await old()));
    await keep(committed, (store) => store.commit(aCommit(adding(aTerm("tool.saw")))));
    for (const name of ["tool.saw", "tool.plane"])
      answered(await filled.commit(aCommit(adding(aTerm(name)))));
    await keep(both, async (store) => store.restore(await old()));
    expect([...kept.values()].map(plainWrites)).toEqual([
      [{ sequence: 1, restored: true }],
      [{ sequence: 1, revision: 1 }],
      [{ sequence: 1, revision: 2, restored: true }],
    ]);

    await server.run(
      `MATCH (w:Write {sequence: 1}) WHERE w.examination IS NULL SET w.revision = coalesce(w.revision, 0) REMOVE w.restored
       WITH count(*) AS done MATCH (w:Write) REMOVE w.content, w.previous, w.hash
       WITH count(*) AS done MATCH (s:Store) REMOVE s.head
       WITH count(*) AS done MATCH (m:ScribelineMigration) WHERE m.number > 1 DELETE m`,
    );
    for (const address of [onlyPieces, committed, both]) {
      const store = await server.open(address);
      expect(await store.writesAfter(0, 9)).toEqual(kept.get(address.store));
      await store.close();
    }
  });

  it("[S43] prepares a new database once, also where two programs open it at the same time", async () => {
    await makeNew(server);
    const address = server.address();
    const stores = await Promise.all([server.open(address), server.open(address), server.open()]);
    expect(
      await server.run("MATCH (m:ScribelineMigration) RETURN m.number AS number ORDER BY number"),
    ).toEqual(MIGRATIONS.map((_, index) => ({ number: index + 1 })));
    expect(
      await server.run("MATCH (s:Store {name: $name}) RETURN count(s) AS count", { name: address.store }),
    ).toEqual([{ count: 1 }]);
    const unique = await server.run("SHOW CONSTRAINTS YIELD type RETURN DISTINCT type");
    expect(unique.map(({ type }) => String(type))).toEqual([expect.stringContaining("UNIQUE")]);
    for (const store of stores) await store.close();
  });

  it("[T11] seeds a new store after another program that was at it, and does not give up meanwhile", async () => {
    const neo4j = server.address();
    await (await server.open(neo4j)).close();
    await server.run(
      `MATCH (s:Store {name: $name})
       SET s.stagedBy = 'another program', s.stagedUntil = timestamp() + 4000, s.stagedSteps = 1`,
      { name: neo4j.store },
    );
    const { store, seeded } = answered(await openData({ dataFolder: "", neo4j }));
    expect(seeded).toBe(true);
    expect((await store.newestRevision())?.number).toBe(1);
    await store.close();
  });
});
