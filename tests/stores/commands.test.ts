import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { keepResults } from "#server/again/keep-results.ts";
import { id } from "#server/domain/ids.ts";
import { LOCAL_CALLER } from "#server/domain/people/caller.ts";
import { storeFile } from "#server/open-data.ts";
import { openSeals } from "#server/proof/open-seals.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { keepReport } from "#server/use-cases/chronicle/keep-report.ts";
import { findKeptReport } from "#server/use-cases/chronicle/list-kept-reports.ts";
import { signCheckpoint } from "#server/use-cases/chronicle/sign-checkpoint.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { runNode } from "#tests/support/run-node.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-commands-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const full = join(folder, "full");
const fresh = (): string => mkdtempSync(join(folder, "fresh-"));

const command = (
  name: "dump" | "restore" | "verify" | "move",
  data: string,
  args: readonly string[] = [],
  env = {},
) =>
  runNode([`server/${name}-store.ts`, ...args], {
    SCRIBELINE_DATA: data,
    npm_lifecycle_event: name,
    npm_config_loglevel: "silent",
    ...env,
  }).ended;

beforeAll(async () => {
  const store = answered(await openSqliteStore(storeFile(full)));
  answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
  answered(await store.createExamination(id("examination.a"), aPiece(), "2026-11-25T10:00:00.000Z"));
  await store.close();
});

describe("[S18] the commands of the store", () => {
  it("dump to a file and to stdout alike; restore; and dump the same bytes again", async () => {
    const file = join(folder, "dump.jsonl");
    expect(await command("dump", full, [file])).toMatchObject({ exit: 0, out: "" });
    const bytes = readFileSync(file, "utf8");
    expect(bytes.split("\n")).toHaveLength(7);
    expect(await command("dump", full)).toMatchObject({ exit: 0, out: bytes, err: "" });

    const data = join(fresh(), "made");
    expect(await command("restore", data, [file])).toMatchObject({ exit: 0, out: "" });
    expect(await command("dump", data)).toMatchObject({ exit: 0, out: bytes });
    const verified = await command("verify", data);
    expect(verified).toMatchObject({ exit: 0, err: "" });
    expect(verified.out).toMatch(/^1 revisions check.* [0-9a-f]{64}\n$/);
  });

  it("restore the dump of the seed, with every field that a term or claim of it has", async () => {
    const seeded = fresh();
    const store = answered(await openSqliteStore(storeFile(seeded)));
    answered(await seedStore(store, answered(await readSeed("seed-data"))));
    await store.close();
    const file = join(seeded, "dump.jsonl");
    expect(await command("dump", seeded, [file])).toMatchObject({ exit: 0 });
    const data = join(fresh(), "made");
    expect(await command("restore", data, [file])).toMatchObject({ exit: 0 });
    expect((await command("dump", data)).out === readFileSync(file, "utf8")).toBe(true);
  });

  it("dump and verify beside a running server, and restore nothing over what it holds", async () => {
    const data = fresh();
    const store = answered(await openSqliteStore(storeFile(data)));
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    expect(await command("verify", data)).toMatchObject({ exit: 0 });
    const dumped = await command("dump", data);
    expect(dumped.out.split("\n")).toHaveLength(5);
    const file = join(data, "dump.jsonl");
    writeFileSync(file, dumped.out);
    const restored = await command("restore", data, [file]);
    expect(restored).toMatchObject({ exit: 2, out: "" });
    expect(restored.err).toMatch(/^STORE_NOT_EMPTY( at \S+)?: /);
    await store.close();
  });

  it("refuse with a code on stderr, nothing on stdout and exit status 2", async () => {
    const cut = join(folder, "cut.jsonl");
    writeFileSync(cut, (await command("dump", full)).out.slice(0, 300));
    const data = fresh();
    const nowhere = join(folder, "no", "folder", "dump.jsonl");
    const refused: readonly (readonly [string, Parameters<typeof command>])[] = [
      ["STORE_UNREACHABLE", ["verify", data]],
      ["STORE_UNREACHABLE", ["dump", data]],
      ["DAMAGED_DUMP", ["restore", data, [cut]]],
      ["STORE_NOT_EMPTY", ["restore", full, [cut]]],
      ["UNREADABLE_FILE", ["restore", data, [join(folder, "none.jsonl")]]],
      ["UNREADABLE_FILE", ["dump", full, [nowhere]]],
      ["WRONG_FORMAT", ["dump", full, [], { npm_config_loglevel: "notice" }]],
    ];
    for (const [code, args] of refused) {
      const { exit, out, err } = await command(...args);
      expect({ exit, out }).toEqual({ exit: 2, out: "" });
      expect(err).toMatch(new RegExp(`^${code}( at \\S+)?: .+\\.\\n$`));
    }
    expect(existsSync(join(folder, "no"))).toBe(false);
    expect((await command("verify", full)).out).toMatch(/^1 revisions/);
  });

  it("[S55] move a store: both hashes are told, the old file keeps its bytes, and the new one is no longer empty", async () => {
    const [from, to] = [fresh(), join(fresh(), "made")];
    const store = answered(await openSqliteStore(storeFile(from)));
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    await store.close();
    const before = readFileSync(storeFile(from));
    const moved = await command("move", full, ["--from", from, "--to", to]);
    expect(moved.exit).toBe(0);
    const [, one, other] =
      /^before ([0-9a-f]{64}) {2}.+\nafter {2}([0-9a-f]{64}) {2}.+\n$/.exec(moved.out) ?? [];
    expect(one).toBeDefined();
    expect(other).toBe(one);
    expect(moved.err).toMatch(
      /^Moved 1 revisions with 1 edits and 0 examinations; the two hashes are the same/,
    );
    expect(readFileSync(storeFile(from)).equals(before)).toBe(true);
    expect((await command("dump", to)).out).toBe((await command("dump", from)).out);

    const again = await command("move", full, ["--from", from, "--to", to]);
    expect(again).toMatchObject({ exit: 2, out: "" });
    expect(again.err).toMatch(/^STORE_NOT_EMPTY: /);
    const unnamed = await command("move", from, ["--to", fresh()]);
    expect(unnamed.out.slice(7, 71)).toBe(one);
    expect((await command("move", from, ["--to", "neo4j://user:secret@"])).err).toMatch(
      /^WRONG_FORMAT: (?!.*secret)/,
    );
    expect((await command("move", from)).err).toMatch(/^npm run move/);
  });

  it("leave an earlier dump as it was where a new one is refused", async () => {
    const data = fresh();
    const file = join(data, "dump.jsonl");
    writeFileSync(file, "an earlier dump");
    expect(await command("dump", data, [file])).toMatchObject({ exit: 2 });
    expect(readFileSync(file, "utf8")).toBe("an earlier dump");
    expect(readdirSync(data)).toEqual(["dump.jsonl"]);
  });

  it("refuse to verify a store that was changed by hand, and name the revision", async () => {
    const data = fresh();
    const store = answered(await openSqliteStore(storeFile(data)));
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    await store.close();
    const raw = new DatabaseSync(storeFile(data));
    raw.exec("UPDATE term SET body = replace(body, 'saw', 'axe')");
    raw.close();
    const verified = await command("verify", data);
    expect(verified.exit).toBe(2);
    expect(verified.err).toMatch(/^STORE_CORRUPT( at \S+)?: Revision 1 does not check/);
  });

  it("[I3] [I4] verify the checkpoints of the house, and one that another house kept", async () => {
    const data = fresh();
    const store = answered(await openSqliteStore(storeFile(data)));
    answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
    const now = () => "2026-11-25T10:00:00.000Z";
    const ports = {
      store,
      now,
      seals: openSeals(data, now),
      newSuffix: () => "aaaaaaaa",
      caller: LOCAL_CALLER,
    };
    const signed = await signCheckpoint(ports);
    await store.close();
    const file = join(data, "checkpoint.json");
    writeFileSync(file, JSON.stringify("checkpoint" in signed ? signed.checkpoint : {}));
    const verified = await command("verify", data, ["--checkpoint", file]);
    expect(verified).toMatchObject({ exit: 0, err: "" });
    expect(verified.out).toMatch(
      /1 checkpoints of the house hold\..*\nThe checkpoint that house\.\S+ signed/s,
    );

    // The whole history is written anew, with hashes of its own.
    const other = fresh();
    const rewritten = answered(await openSqliteStore(storeFile(other)));
    answered(await rewritten.commit(aCommit(adding(aTerm("tool.axe")))));
    await rewritten.close();
    expect(await command("verify", other)).toMatchObject({ exit: 0 });
    const found = await command("verify", other, ["--checkpoint", file]);
    expect(found.exit).toBe(2);
    expect(found.err).toMatch(/^OTHER_HISTORY at \/revision\/1: Revision 1 has another hash here/);
    writeFileSync(file, "{}");
    expect((await command("verify", other, ["--checkpoint", file])).err).toMatch(/^WRONG_FORMAT/);
  });

  it("[I6] examine a signed report again: 0 for the same bytes, 2 for another history", async () => {
    const data = fresh();
    const store = answered(await openSqliteStore(storeFile(data)));
    answered(await store.commit(aCommit(sawGraph)));
    const chest = id<"examination">("examination.a");
    answered(await store.createExamination(chest, aPiece(), "2026-11-25T10:00:00.000Z"));
    const now = () => "2026-11-25T10:00:00.000Z";
    const ports = {
      store,
      now,
      seals: openSeals(data, now),
      newSuffix: () => "aaaaaaaa",
      caller: LOCAL_CALLER,
    };
    const listed = await keepReport({ ...ports, results: keepResults() }, chest);
    const kept = await findKeptReport(ports, "id" in listed ? listed.id : "");
    await store.close();
    const file = join(data, "report.json");
    writeFileSync(file, JSON.stringify(kept, null, 2));
    const again = (place: string) =>
      runNode(["server/again-report.ts", file], { SCRIBELINE_DATA: place }).ended;
    expect(await again(data)).toMatchObject({
      ...{ exit: 0, err: "" },
      out: expect.stringMatching(/same report, byte for byte\.\nbefore ([0-9a-f]{64})\nnow {4}\1\n$/),
    });
    expect(await again(full)).toMatchObject({ exit: 2, err: expect.stringMatching(/^OTHER_HISTORY/) });
    writeFileSync(file, JSON.stringify({ ...kept, by: "somebody" }));
    expect(await again(data)).toMatchObject({ exit: 2, err: expect.stringMatching(/^BROKEN_SEAL/) });
  });

  it("[I15] [I16] give what was accepted, and take it into another store as proposals, once", async () => {
    const [from, into] = [fresh(), fresh()];
    for (const [data, changes] of [
      [from, [sawGraph, adding(aTerm("tool.adze"))]],
      [into, [sawGraph]],
    ] as const) {
      const store = answered(await openSqliteStore(storeFile(data)));
      for (const change of changes) answered(await store.commit(aCommit(change)));
      await store.close();
    }
    const file = join(from, "changes.json");
    const run = (name: string, data: string, ...args: readonly string[]) =>
      runNode([`server/${name}-changes.ts`, file, ...args], { SCRIBELINE_DATA: data }).ended;
    const given = await run("give", from, "--since", "1");
    expect(given).toMatchObject({
      exit: 0,
      out: "",
      err: expect.stringMatching(/^Wrote 1 edits, from revision 1 to 2/),
    });
    const looked = await run("take", into, "--look");
    expect(looked.out).toMatch(/^would propose: adze\nFrom house\.\S+: 1 proposals, 0 things the same here/);
    expect((await run("take", into)).out).toMatch(/^proposal\.\S+: adze\nFrom/);
    expect((await run("take", into)).out).toMatch(
      /: 0 proposals, 0 things the same here, 1 changes proposed before/,
    );
    writeFileSync(file, readFileSync(file, "utf8").replace("adze", "axle"));
    expect(await run("take", into)).toMatchObject({
      exit: 2,
      out: "",
      err: expect.stringMatching(/^BROKEN_SEAL/),
    });
    expect((await run("give", from, "--since", "9")).err).toMatch(/^UNKNOWN_REVISION/);
  });
});
