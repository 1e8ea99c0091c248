import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zstdDecompressSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { LOCAL_CALLER } from "#server/domain/people/caller.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { readBackupState } from "#server/keeping/backup-state.ts";
import { storeFile } from "#server/open-data.ts";
import type { Store } from "#server/ports/store.ts";
import { HOUSE_KEY_FILE, openSeals } from "#server/proof/open-seals.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { signCheckpoint } from "#server/use-cases/chronicle/sign-checkpoint.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { runNode } from "#tests/support/run-node.ts";

const root = mkdtempSync(join(tmpdir(), "scribeline-backing-up-"));
const data = join(root, "data");
const fresh = (): string => mkdtempSync(join(root, "backups-"));
let store: Store;
beforeAll(async () => {
  store = answered(await openSqliteStore(storeFile(data)));
  answered(await seedStore(store, answered(await readSeed("seed-data"))));
});
afterAll(async () => {
  await store.close();
  rmSync(root, { recursive: true, force: true });
});

const start = (folder: string, args: readonly string[] = [], env = {}) =>
  runNode(["server/back-up-store.ts", folder, ...args], { SCRIBELINE_DATA: data, ...env });
const backUp = (folder: string, args: readonly string[] = [], env = {}) => start(folder, args, env).ended;
const backups = (folder: string): readonly string[] =>
  readdirSync(folder).filter((name) => name.endsWith(".jsonl.zst"));
let added = 0;
const grow = async (): Promise<void> => {
  answered(await store.commit(aCommit(adding(aTerm(`tool.added-${added++}`)))));
};

describe("the command that backs up", () => {
  it("[S56] works beside a server that writes, and its file restores to what the store was", async () => {
    const folder = fresh();
    const { ended, child } = start(folder);
    while (child.exitCode === null) {
      await grow();
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    const made = await ended;
    expect(made.exit).toBe(0);
    const [sha256 = "", file = ""] = made.out.trim().split("  ");
    expect(backups(folder)).toEqual([file]);
    const dump = zstdDecompressSync(readFileSync(join(folder, file))).toString();
    expect(JSON.parse(dump.trimEnd().split("\n").at(-1) ?? "")).toMatchObject({ kind: "trailer", sha256 });
    const restored = join(root, "restored");
    const done = await runNode(["server/restore-store.ts", join(folder, file)], { SCRIBELINE_DATA: restored })
      .ended;
    expect(done.exit).toBe(0);
    const again = answered(await openSqliteStore(storeFile(restored), { readOnly: true }));
    const newest = await again.newestRevision();
    expect(newest).toEqual(await store.revision(newest?.number ?? 0));
    await again.close();
  });

  it("[I2] holds no key: the command says what to keep beside, and a restore says which key is lacking", async () => {
    const folder = fresh();
    expect((await backUp(folder)).err).not.toContain("key");
    const at = "2026-11-26T10:00:00.000Z";
    const seals = openSeals(data, () => at);
    const caller = LOCAL_CALLER;
    answered(await signCheckpoint({ store, seals, caller, now: () => at, newSuffix: () => "first" }));
    const { err, out } = await backUp(folder);
    const key = join(data, HOUSE_KEY_FILE);
    expect(err).toContain(`keep a copy of ${key} apart from the backups`);
    const file = join(folder, out.trim().split("  ")[1] ?? "");
    const dump = zstdDecompressSync(readFileSync(file)).toString();
    expect(dump).toContain('"kind":"checkpoint"');
    expect(dump).not.toContain(JSON.parse(readFileSync(key, "utf8")).privateKey);
    const restore = async (into: string) =>
      (await runNode(["server/restore-store.ts", file], { SCRIBELINE_DATA: into }).ended).err;
    const { house } = await seals.house();
    expect(await restore(fresh())).toContain(`signed by the house ${house}, whose key does not lie in`);
    const whole = fresh();
    copyFileSync(key, join(whole, HOUSE_KEY_FILE));
    expect(await restore(whole)).not.toContain("key");
    const other = fresh();
    await openSeals(other, () => at).house();
    expect(await restore(other)).toContain(`signed by the house ${house}, whose key does not lie in`);
    rmSync(key);
  });

  it("[S58] [S59] keeps as many as the settings say, and makes none while a good one is young", async () => {
    const folder = fresh();
    for (let n = 0; n < 3; n++)
      expect(await backUp(folder, [], { SCRIBELINE_BACKUPS_KEPT: "2" })).toMatchObject({ exit: 0 });
    expect(backups(folder).map((name) => name.slice(0, 13))).toEqual(["backup-000002", "backup-000003"]);
    expect(await backUp(folder, ["--if-due", "1"])).toEqual({ exit: 0, out: "", err: "" });
    expect(backups(folder)).toHaveLength(2);
    expect((await backUp(folder, ["--if-due", "soon"])).exit).toBe(2);
  });

  it("[S58] is refused while another is at work in the folder", async () => {
    const folder = fresh();
    const { child, ended } = start(folder);
    await expect.poll(() => readdirSync(folder)).toContainEqual(expect.stringMatching(/part$/));
    child.kill("SIGSTOP");
    const refused = await backUp(folder);
    child.kill("SIGCONT");
    expect(refused).toMatchObject({ exit: 2, out: "" });
    expect(refused.err).toMatch(/^STORE_LOCKED: Another backup into /m);
    expect(await ended).toMatchObject({ exit: 0 });
    expect(backups(folder)).toHaveLength(1);
  });

  it("[S58] killed at any moment takes nothing of the earlier ones, and leaves nothing that the next does not clear", async () => {
    const folder = fresh();
    const { err } = await backUp(folder);
    expect(err).toMatch(/^Backed up into /m);
    const [first = ""] = backups(folder);
    const bytes = readFileSync(join(folder, first));
    const random = randomSource(11);
    for (let n = 0; n < 8; n++) {
      await grow();
      // Enough are kept that none goes because of its age.
      const { child, ended } = start(folder, [], { SCRIBELINE_BACKUPS_KEPT: "20" });
      await new Promise((resolve) => setTimeout(resolve, 150 + random.below(2_500)));
      child.kill("SIGKILL");
      await ended;
      expect(readFileSync(join(folder, first)).equals(bytes)).toBe(true);
      for (const name of backups(folder))
        expect(zstdDecompressSync(readFileSync(join(folder, name))).toString()).toMatch(
          /"kind":"trailer".*\n$/,
        );
    }
    expect(await backUp(folder)).toMatchObject({ exit: 0 });
    expect(readdirSync(folder).filter((name) => /part$|^rehearsal/.test(name))).toEqual([]);
  });

  it("[S58] meets a limit on files as a full disk: it is told, and the earlier backup stays", async () => {
    const folder = fresh();
    await backUp(folder);
    const before = backups(folder);
    // The shell counts blocks of 1,024 bytes: a file may have 200 KB.
    const limited = spawnSync(
      "bash",
      ["-c", `ulimit -f 200; exec "$0" server/back-up-store.ts "$1"`, process.execPath, folder],
      { env: { ...process.env, SCRIBELINE_DATA: data, SCRIBELINE_BACKUPS_KEPT: "1" }, encoding: "utf8" },
    );
    expect(limited.stdout).toBe("");
    expect(limited.stderr).toMatch(/^STORE_FULL: /m);
    expect(limited.status).toBe(2);
    expect(backups(folder)).toEqual(before);
    expect(await readBackupState(folder)).toMatchObject({ lastTry: { code: "STORE_FULL" }, lastGood: {} });
  });

  it("[S56] refuses a folder that cannot be made, and a store that is not there", async () => {
    const nowhere = await backUp(join(storeFile(data), "folder"));
    expect(nowhere).toMatchObject({ exit: 2, out: "" });
    expect(nowhere.err).toMatch(/^UNREADABLE_FILE: /m);
    const folder = fresh();
    const none = await backUp(folder, [], { SCRIBELINE_DATA: join(root, "none") });
    expect(none.err).toMatch(/^STORE_UNREACHABLE: /m);
    expect(existsSync(join(root, "none"))).toBe(false);
    expect(await readBackupState(folder)).toMatchObject({ lastTry: { code: "STORE_UNREACHABLE" } });
  });

  it("[S59] is run by a server that is told where, as soon as it starts", async () => {
    const [folder, own] = [fresh(), join(root, "served")];
    const server = runNode(["server/start.ts", "--no-build"], {
      ...{ SCRIBELINE_DATA: own, SCRIBELINE_BACKUPS: folder, SCRIBELINE_PORT: "0" },
    });
    try {
      await expect.poll(server.said).toMatch(/"level":"info","event":"backup","file":"backup-000001-/);
      expect(await readBackupState(folder)).toMatchObject({ lastGood: { revisions: 1, examinations: 4 } });
    } finally {
      server.child.kill("SIGTERM");
      await server.ended;
    }
  });
});
