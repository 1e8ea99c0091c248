import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it, vi } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { printGraph } from "#server/generator/print-graph.ts";
import { type ImportOptions, importFile } from "#server/importing/import-file.ts";
import type { ImportTarget } from "#server/ports/import-target.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { ARGUMENTS } from "#server/stores/neo4j/bulk/bulk-files.ts";
import { type Fill, openFill } from "#server/stores/neo4j/bulk/open-fill.ts";
import { openNeo4jStore } from "#server/stores/neo4j/open-neo4j-store.ts";
import { aCommit, adding, aSource, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openFromJars } from "#tests/support/neo4j/by-jars.ts";
import { type OnNeo4j, onNeo4j, workOn } from "#tests/support/neo4j/on-neo4j.ts";
import type { Filled, KillableNeo4j } from "#tests/support/neo4j/start-server.ts";
import { dumpOf } from "#tests/support/read-all.ts";

// Each starts a server again, and the import by itself takes seconds.
vi.setConfig({ testTimeout: 480_000 });

const folder = mkdtempSync(join(tmpdir(), "scribeline-filling-"));
const fresh = (): string => mkdtempSync(join(folder, "files-"));
const bytesOf = async (store: Store): Promise<string> => (await dumpOf(store)).map(dumpLine).join("");
const AT = "2026-11-25T10:00:00.000Z";
const OPTIONS: ImportOptions = {
  ...{ by: "a tester", message: 'an import\nin two lines, "quoted"\tand \u0001more', mayReplace: false },
  ...{ isDry: false, now: () => new Date(AT), tell: () => {}, thingsARevision: 300 },
};

/** The first writes of a server that has just started take as long as the machine is busy. */
const PATIENT = { patience: 60_000 };

/** Imports a file, and says in how many revisions. */
async function importedInto(target: ImportTarget, file: string): Promise<number> {
  const done = await importFile(target, file, OPTIONS);
  if ("problems" in done) throw new Error(done.problems.map(({ message }) => message).join("\n"));
  if (done.refusal !== undefined) throw new Error(done.refusal.message);
  return done.written.revisions;
}

/** All nodes of a store with their labels and properties, and all relationships; but for the key of a write, which is drawn. */
async function everythingOf({ run }: OnNeo4j, store: string): Promise<readonly string[]> {
  const plain = (properties: object): object =>
    Object.fromEntries(
      Object.entries(properties)
        .filter(([name]) => name !== "key")
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([name, value]) => [name, ArrayBuffer.isView(value) ? [...(value as Int8Array)] : value]),
    );
  const nodes = await run(
    `MATCH (n) WHERE coalesce(n.store, n.name) = $store
     RETURN labels(n) AS labels, properties(n) AS properties,
       [name IN keys(n) WHERE name <> 'key' | name + ': ' + valueType(n[name])] AS types`,
    { store },
  );
  const relationships = await run(
    `MATCH (a {store: $store})-[r]->(b)
     RETURN labels(a) + [a.id, toString(a.since)] AS from, type(r) AS type, properties(r) AS properties,
       labels(b) + [b.id, toString(b.since)] AS to`,
    { store },
  );
  return [...nodes, ...relationships]
    .map((row) =>
      JSON.stringify({
        ...row,
        properties: plain(row["properties"] as object),
        ...("types" in row ? { types: (row["types"] as string[]).sort() } : {}),
      }),
    )
    .sort();
}

onNeo4j("a database filled in bulk", (server) => {
  // Only what is started from jars can be stopped here and has its tools beside it.
  describe.runIf(server.from.startsWith("the jars"))("on a server of its own", () => {
    let own: KillableNeo4j | undefined;
    afterAll(async () => {
      await own?.stop();
      rmSync(folder, { recursive: true, force: true });
    });

    /** Stops the server, fills its database, and starts it again. */
    async function fillWith(
      put: (files: Fill) => Promise<unknown>,
      store: string,
      spoil: (files: string) => void = () => {},
    ): Promise<{ readonly filled: Filled; readonly on: OnNeo4j }> {
      own ??= await openFromJars();
      if (own === undefined) throw new Error("There were jars for the other server");
      const into = fresh();
      const files = answered(openFill(into, store));
      await put(files);
      expect(await files.end()).toBeUndefined();
      spoil(into);
      await own.end();
      const filled = await own.fill(join(into, ARGUMENTS));
      await own.startAgain();
      return { filled, on: workOn(own) };
    }

    it("[S72] [S73] holds what an import leaves, node for node, and goes on as any store", async () => {
      const file = join(folder, "graph.jsonl");
      writeFileSync(file, [...printGraph({ claims: 600, claimsATerm: 4, seed: 7 })].join(""));
      const address = server.address();
      const written = await server.open(address, PATIENT);
      expect(await importedInto(written, file)).toBeGreaterThan(2);

      const { filled, on } = await fillWith((files) => importedInto(files, file), address.store);
      expect(filled.exit, filled.said).toBe(0);
      const there = { ...on.address(), store: address.store };
      const early = await openNeo4jStore(there, { readOnly: true });
      expect(isProblem(early) && early.code).toBe("STORE_UNREACHABLE");
      const store = await on.open(there, PATIENT);
      expect(await everythingOf(on, address.store)).toEqual(await everythingOf(server, address.store));
      expect(await bytesOf(store)).toBe(await bytesOf(written));
      expect(await store.verify()).toEqual(await written.verify());
      const rules =
        "SHOW INDEXES YIELD name, type, owningConstraint RETURN name, type, owningConstraint ORDER BY name";
      const named = async (where: OnNeo4j) =>
        (await where.run(rules)).filter(({ type }) => type !== "LOOKUP");
      expect(await named(on)).toEqual(await named(server));
      expect((await named(on)).length).toBeGreaterThan(15);

      const memory = openMemoryStore();
      answered(await memory.restore(written.dump()));
      const seeds = (await memory.listTerms({ kinds: ["feature"] }, { first: 40 })).rows.map(
        (term) => term.id,
      );
      const ask = { seeds, regions: [], maxDepth: 6 };
      const reached = await store.neighbourhood(ask);
      expect(reached.claims.length).toBeGreaterThan(20);
      expect(reached).toEqual(await memory.neighbourhood(ask));
      const commit = aCommit(adding(aTerm("tool.of-later")), { at: AT });
      for (const each of [store, written, memory]) answered(await each.commit(commit));
      expect(await bytesOf(store)).toBe(await bytesOf(memory));
      expect(await store.verify()).toEqual(await memory.verify());
      for (const each of [store, written, memory]) await each.close();
    });

    it("[S72] holds what a restored dump leaves: ends of versions, examinations, cards and the ledger", async () => {
      const from = openMemoryStore();
      const [saw, mark] = [aTerm("tool.saw"), aTerm("feature.mark")];
      const changed = aTerm("tool.saw", { note: 'A\ttab, a\nline, a "quote" and ü.' });
      const claim = aClaim({
        ...{ id: "claim.a", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] },
        citations: [
          { basis: "published", source: id("source.book"), locator: "p. 4,\n\tfoot \u0001", note: "" },
          { basis: "published", source: id("source.book"), locator: "p. 5" },
        ],
      });
      for (const change of [
        adding(saw, mark, aSource("source.book"), claim),
        adding(...Array.from({ length: 1_200 }, (_, n) => aTerm(`tool.t${n}`, { note: "Made up." }))),
        replacing(saw, changed),
        withdrawing(claim),
        adding(aTerm("tool.plane")),
        withdrawing(aTerm("tool.t7", { note: "Made up." })),
        adding(claim, aTerm("tool.t7")),
      ])
        answered(await from.commit(aCommit(change)));
      const examination = id<"examination">("examination.a");
      answered(await from.createExamination(examination, aPiece(), AT));
      answered(await from.changeExamination(examination, 1, { ...aPiece(), note: "a\tnote" }, AT));
      answered(await from.undoExamination(examination, 2, AT));
      const deed = { by: "person.a", at: AT, did: "write comments" };
      const card = { kind: "comment", id: "comment.a", expectedVersion: 0 };
      answered(
        await from.writeCards({
          cards: [{ ...card, next: { keys: { on: ["tool.saw", ""] }, body: { text: "" } } }],
          deed,
        }),
      );
      const address = server.address();
      const restored = await server.open(address, PATIENT);
      answered(await restored.restore(from.dump()));

      const { filled, on } = await fillWith(
        async (files) => answered(await files.restore(from.dump())),
        address.store,
      );
      expect(filled.exit, filled.said).toBe(0);
      const store = await on.open({ ...on.address(), store: address.store }, PATIENT);
      expect(await everythingOf(on, address.store)).toEqual(await everythingOf(server, address.store));
      expect(await bytesOf(store)).toBe(await bytesOf(from));
      expect(await store.verify()).toEqual(await from.verify());
      answered(await store.deleteExamination(examination, 3, AT));
      for (const each of [store, restored, from]) await each.close();
    });

    it("[S73] is refused, and left as it is, where files were cut", async () => {
      const { filled, on } = await fillWith(
        async (files) =>
          answered(await files.commit(aCommit(adding(aTerm("tool.saw"), aTerm("tool.plane"))))),
        "scribeline",
        (files) => {
          const rows = readFileSync(join(files, "OF.csv"), "utf8").split("\n");
          writeFileSync(join(files, "OF.csv"), rows.slice(1).join("\n"));
        },
      );
      expect(filled.exit, filled.said).toBe(0);
      const opened = await openNeo4jStore({ ...on.address(), store: "scribeline" });
      expect(opened).toMatchObject({ code: "STORE_CORRUPT" });
      expect(isProblem(opened) && opened.message).toMatch(
        / 1 relationships out of \d+ and 2: .*make the files anew/,
      );
      expect(await on.run("SHOW CONSTRAINTS")).toEqual([]);
    });

    it("[S73] is none where the import was broken off", async () => {
      const { filled, on } = await fillWith(
        async (files) => answered(await files.commit(aCommit(adding(aTerm("tool.saw"))))),
        "scribeline",
        (files) => writeFileSync(join(files, "OF.csv"), "1\t999\n"),
      );
      expect(filled.exit).not.toBe(0);
      const opened = await openNeo4jStore(on.address(), { patience: 300 });
      expect(opened).toMatchObject({ code: "STORE_UNREACHABLE" });
    });
  });
});
