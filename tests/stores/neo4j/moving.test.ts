import fc from "fast-check";
import { expect, it } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import type { DumpRecord } from "#server/domain/dump.ts";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { onNeo4j } from "#tests/support/neo4j/on-neo4j.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { openTemporary } from "#tests/support/temporary-store.ts";
import { keptDumps } from "../suite/kept-dumps.ts";

const bytesOf = async (store: Store): Promise<string> => (await dumpOf(store)).map(dumpLine).join("");

onNeo4j("moving a store", (server) => {
  keptDumps("neo4j", () => server.open());

  it("[S8] from a file to a server and back gives the same bytes, whatever the graph", async () => {
    await fc.assert(
      fc.asyncProperty(anyHistory, fc.nat(3), async ({ changes }, versions) => {
        const file = await openTemporary();
        for (const change of changes) answered(await file.commit(aCommit(change)));
        for (let n = 0; n < versions; n++) {
          const at = `2026-11-25T10:0${n}:00.000Z`;
          answered(
            n === 0
              ? await file.createExamination(id("examination.a"), aPiece(), at)
              : await file.changeExamination(id("examination.a"), n, { ...aPiece(), note: `note ${n}` }, at),
          );
        }
        const onServer = await server.open();
        answered(await onServer.restore(file.dump()));
        const back = await openTemporary();
        answered(await back.restore(onServer.dump()));
        const bytes = await bytesOf(file);
        expect(await bytesOf(onServer)).toBe(bytes);
        expect(await bytesOf(back)).toBe(bytes);
        for (const store of [file, onServer, back]) await store.close();
      }),
      { numRuns: 12 },
    );
  });

  it("[S17] [S8] seeds a server with what it seeds a file with, also where two programs start at once", async () => {
    const seed = answered(await readSeed("seed-data"));
    const file = await openTemporary();
    answered(await seedStore(file, seed));
    const address = server.address();
    const [one, other] = [await server.open(address), await server.open(address)];
    const seeded = await Promise.all([one, other].map((store) => seedStore(store, seed)));
    expect(seeded.map(answered).sort()).toEqual([false, true]);
    expect(await one.newestRevision()).toEqual(await file.newestRevision());
    expect(await bytesOf(other)).toBe(await bytesOf(file));
    expect(await one.verify()).toEqual(await file.verify());
    for (const store of [file, one, other]) await store.close();
  });

  it("[S8] [S45] restores a large dump while it is read, in several transactions, and sees none of it before the last", async () => {
    const file = await openTemporary();
    const terms = Array.from({ length: 60 }, (_, n) => aTerm(`tool.t${n}`));
    for (let at = 0; at < 60; at += 6)
      answered(await file.commit(aCommit(adding(...terms.slice(at, at + 6)))));
    const [first] = terms;
    const changed = aTerm("tool.t0", { note: "n" });
    answered(await file.commit(aCommit(replacing(first as Term, changed))));
    answered(await file.commit(aCommit(withdrawing(changed, terms[7] as Term))));
    answered(await file.createExamination(id("examination.a"), aPiece(), "2026-11-25T10:00:00.000Z"));
    const address = server.address();
    const onServer = await server.open(address, { rowsAtOnce: 10 });
    const reader = await server.open(address);
    let seen = 0;
    async function* watched(): AsyncGenerator<DumpRecord> {
      for await (const record of file.dump()) {
        if (record.kind === "examination") seen += (await reader.newestRevision()) === undefined ? 1 : 0;
        yield record;
      }
    }
    answered(await onServer.restore(watched()));
    expect(seen).toBe(1);
    expect(await bytesOf(onServer)).toBe(await bytesOf(file));
    expect(await onServer.verify()).toEqual(await file.verify());

    const cut = await server.open(server.address(), { rowsAtOnce: 10 });
    const records = await dumpOf(file);
    expect(refusedWith(await cut.restore(records.toSpliced(-2, 1)))).toBe("DAMAGED_DUMP");
    expect(await dumpOf(cut)).toHaveLength(2);
    answered(await cut.restore(records));
    expect(await bytesOf(cut)).toBe(await bytesOf(file));
    for (const store of [file, onServer, reader, cut]) await store.close();
  });
});
