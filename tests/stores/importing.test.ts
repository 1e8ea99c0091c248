import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { printGraph } from "#server/generator/print-graph.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
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
