import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { printGraph } from "#server/generator/print-graph.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { importFile } from "#server/importing/import-file.ts";
import { storeFile } from "#server/open-data.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openFileFill } from "#server/stores/sqlite/fill/open-file-fill.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";
import { runNode } from "#tests/support/run-node.ts";

const root = mkdtempSync(join(tmpdir(), "scribeline-importing-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));
const fresh = (): string => mkdtempSync(join(root, "data-"));
const file = join(root, "file.jsonl");
let things = 0;
beforeAll(() => {
  writeFileSync(file, [...printGraph({ claims: 3_000, claimsATerm: 4, seed: 3 })].join(""));
  things = readFileSync(file, "utf8").trimEnd().split("\n").length;
});

const start = (data: string, args: readonly string[] = [file]) =>
  runNode(["server/import-into-store.ts", ...args], { SCRIBELINE_DATA: data });

/** Ids of what the changes of a store have added, and whether anything else was done. */
async function addedTo(data: string): Promise<{ readonly ids: readonly string[]; readonly others: number }> {
  const store = answered(await openSqliteStore(storeFile(data)));
  answered(await store.verify());
  const edits = (await dumpOf(store)).flatMap((record) => (record.kind === "revision" ? record.change : []));
  await store.close();
  return {
    ids: edits.map(({ after }) => after?.id ?? ""),
    others: edits.filter(({ before }) => before !== undefined).length,
  };
}

describe("[S61] the command that imports", () => {
  it("killed at any moment goes on where it was, and writes nothing twice", async () => {
    const data = fresh();
    const random = randomSource(5);
    let kills = 0;
    for (let tries = 0; tries < 12; tries++) {
      const { child, ended } = start(data, [file, "--things", "100"]);
      const kill = setTimeout(() => child.kill("SIGKILL"), 150 * (tries + 1) + random.below(300));
      const { exit } = await ended;
      clearTimeout(kill);
      if (exit === 0) break;
      kills++;
    }
    expect(kills).toBeGreaterThan(0);
    const last = await start(data, [file, "--things", "100"]).ended;
    expect(last).toMatchObject({ exit: 0 });
    const { ids, others } = await addedTo(data);
    expect(ids).toHaveLength(things);
    expect(new Set(ids).size).toBe(things);
    expect(others).toBe(0);
    const again = await start(data).ended;
    expect(again.out).toMatch(/: 0 added and 0 changed in 0 revisions; [\d,]+ stood already\.\n$/);
  }, 180_000);

  it("says at the end what it did, on standard output", async () => {
    const data = fresh();
    const { exit, out } = await start(data, [file, "--by", "A. Keeper", "--message", "First part"]).ended;
    expect(exit).toBe(0);
    expect(out).toMatch(
      /^[\d,]+ things, in .+: [\d,]+ added and 0 changed in 1 revisions; 0 stood already\.\n$/,
    );
    const store = answered(await openSqliteStore(storeFile(data), { readOnly: true }));
    expect(await store.newestRevision()).toMatchObject({ by: "A. Keeper", message: "First part" });
    await store.close();
  });

  it("makes no store to look a file through, and tells what would be done", async () => {
    const data = join(fresh(), "none");
    const { exit, out } = await start(data, [file, "--dry-run"]).ended;
    expect(exit).toBe(0);
    expect(out).toMatch(/ would be added, 0 changed; 0 stood already\.\n$/);
    expect(existsSync(data)).toBe(false);
  });

  it("[S60] refuses a file with each problem on a line of standard error, and exit status 2", async () => {
    const bad = join(root, "bad.jsonl");
    writeFileSync(bad, '{\n{"kind":"term","term":{"id":"tool.saw","kind":"tool","label":""}}\n');
    const { exit, out, err } = await start(fresh(), [bad]).ended;
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    const lines = err.trimEnd().split("\n");
    expect(lines).toHaveLength(3);
    expect(lines[0]).toMatch(/^WRONG_FORMAT: line 1, field kind: /);
    expect(lines[1]).toMatch(/^WRONG_FORMAT: line 2, tool\.saw, field label: /);
    expect(lines[2]).toMatch(/^Nothing of .+bad\.jsonl was imported; correct it and import it again\.$/);
    expect((await start(fresh(), []).ended).err).toMatch(/^npm run import/);
  });
});

describe("[S75] an import into an empty file", () => {
  const now = () => new Date(Date.UTC(2026, 10, 26));
  const options = { by: "a tester", message: "m", mayReplace: false, isDry: false, tell: () => {}, now };
  const small = { ...options, thingsARevision: 700 };

  it("keeps what the same import makes of a store that takes revision after revision, whatever the order of the lines", async () => {
    const mixed = join(root, "mixed.jsonl");
    writeFileSync(mixed, `${readFileSync(file, "utf8").trimEnd().split("\n").reverse().join("\n")}\n`);
    for (const path of [file, mixed]) {
      const at = join(fresh(), "store.sqlite");
      const store = answered(await openSqliteStore(at));
      const fill = answered(await openFileFill(at));
      const filled = await importFile(fill, path, { ...small, canTakeBack: true });
      expect(await store.newestRevision()).toBeUndefined();
      expect(await fill.end()).toBeUndefined();
      const other = openMemoryStore();
      const imported = await importFile(other, path, small);
      expect(filled).toMatchObject({ written: { added: things } });
      if ("problems" in filled || "problems" in imported) throw new Error("It was refused");
      expect(filled.written).toEqual(imported.written);
      expect(await dumpOf(store)).toEqual(await dumpOf(other));
      answered(await store.verify());
      await store.close();
    }
  }, 180_000);

  it("leaves nothing where the last line is wrong, and tells all that is wrong", async () => {
    const bad = join(root, "bad-end.jsonl");
    const term = { id: "tool.last", kind: "tool", label: "last", broader: "tool.of-nobody" };
    writeFileSync(bad, `${readFileSync(file, "utf8")}${JSON.stringify({ kind: "term", term })}\n`);
    const data = fresh();
    const { exit, err } = await start(data, [bad, "--things", "100"]).ended;
    expect(exit).toBe(2);
    expect(err).toMatch(/UNKNOWN_TERM: line \d+, tool\.last, field broader: /);
    expect(await addedTo(data)).toEqual({ ids: [], others: 0 });
    expect((await start(data).ended).exit).toBe(0);
    expect((await addedTo(data)).ids).toHaveLength(things);
  }, 120_000);

  it("is refused where something stands, or another program is writing", async () => {
    const at = join(fresh(), "store.sqlite");
    const store = answered(await openSqliteStore(at));
    const first = answered(await openFileFill(at));
    expect(await openFileFill(at, 50)).toMatchObject({ code: "STORE_LOCKED" });
    await first.drop();
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    expect(await openFileFill(at)).toMatchObject({ code: "STORE_NOT_EMPTY" });
    await store.close();
  });

  it("writes nothing after a refusal, of what was on its way already, and does not end", async () => {
    const at = join(fresh(), "store.sqlite");
    const store = answered(await openSqliteStore(at));
    const fill = answered(await openFileFill(at, 5000, { mostPages: 60 }));
    const large = adding(aTerm("tool.plane", { note: "n".repeat(400_000) }));
    await fill.commit(aCommit(large));
    await fill.commit(aCommit(adding(aTerm("tool.saw"))));
    expect(await fill.end()).toMatchObject({ code: "STORE_FULL" });
    await fill.drop();
    expect(await store.newestWrite()).toBe(0);
    answered(await store.verify());
    await store.close();
  });

  it("gives the refusal of a medium that has no more room, and leaves nothing", async () => {
    const at = join(fresh(), "store.sqlite");
    const store = answered(await openSqliteStore(at));
    const fill = answered(await openFileFill(at, 5000, { mostPages: 60 }));
    const done = await importFile(fill, file, { ...small, canTakeBack: true });
    const refusal = "problems" in done ? done : (done.refusal ?? (await fill.end()));
    expect(refusal).toMatchObject({ code: "STORE_FULL" });
    await fill.drop();
    expect(await store.newestRevision()).toBeUndefined();
    answered(await store.verify());
    await store.close();
  });
});
