import { spawn } from "node:child_process";
import { once } from "node:events";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Store } from "#server/ports/store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const WRITER = fileURLToPath(new URL("write-until-stopped.ts", import.meta.url));

/** The names of what was acknowledged: whole lines only. */
const acknowledged = (said: string): readonly string[] =>
  said
    .split("\n")
    .slice(0, -1)
    .filter((line) => line.startsWith("wrote "))
    .map((line) => line.slice(6));

async function missingFrom(store: Store, names: readonly string[]): Promise<readonly string[]> {
  const missing: string[] = [];
  for (const name of names) {
    const number = Number(name.split("-")[1]);
    const found =
      number % 2 === 0
        ? (await store.terms([id(`tool.${name}`)])).size === 1
        : (await store.examination(id(`examination.${name}`))) !== undefined;
    if (!found) missing.push(name);
  }
  return missing;
}

describe("[S3] an acknowledged write", () => {
  it("survives kill -9 at any moment, again and again on one file", async () => {
    const path = temporaryPath();
    const written: string[] = [];
    for (let round = 0; round < 6; round++) {
      const child = spawn(process.execPath, [WRITER, path, `r${round}`], {
        stdio: ["ignore", "pipe", "inherit"],
      });
      let said = "";
      child.stdout.setEncoding("utf8").on("data", (text: string) => {
        said += text;
      });
      await once(child.stdout, "data");
      await new Promise((resolve) => setTimeout(resolve, 20 + round * 47));
      child.kill("SIGKILL");
      await once(child, "close");
      expect(child.signalCode).toBe("SIGKILL");
      written.push(...acknowledged(said));

      const reader = answered(await openSqliteStore(path, { readOnly: true }));
      expect(await missingFrom(reader, written)).toEqual([]);
      await reader.close();
      const store = answered(await openSqliteStore(path));
      expect(await missingFrom(store, written)).toEqual([]);
      expect(await store.verify()).toHaveProperty("head");
      await store.close();
    }
    expect(written.length).toBeGreaterThan(30);
  });

  it("is there when the disk was full for the next one, of which nothing is", async () => {
    const path = temporaryPath();
    const child = spawn(
      "bash",
      ["-c", 'trap "" XFSZ; ulimit -f 720; exec "$0" "$@"', process.execPath, WRITER, path, "full"],
      { stdio: ["ignore", "pipe", "inherit"] },
    );
    let said = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      said += text;
    });
    await once(child, "close");
    const names = acknowledged(said);
    const [, code, head] = said.trim().split("\n").at(-1)?.split(" ") ?? [];
    expect(code).toBe("STORE_FULL");
    expect(names.length).toBeGreaterThan(20);

    const store = answered(await openSqliteStore(path));
    expect(await missingFrom(store, names)).toEqual([]);
    const revisions = names.filter((_, n) => n % 2 === 0).length;
    expect((await store.newestRevision())?.number).toBe(revisions);
    expect(Number(head)).toBe(revisions);
    expect((await store.listExaminations({ first: 1 })).total).toBe(names.length - revisions);
    expect(await store.verify()).toMatchObject({ revisions });
    answered(await store.commit(aCommit(adding(aTerm("tool.after")))));
    await store.close();
  });
});

describe("[S3] a log of writes that the disk kept in part", () => {
  async function filledWithLog(): Promise<{ path: string; log: Buffer; revisions: number }> {
    const path = temporaryPath();
    const copy = temporaryPath();
    const store = answered(await openSqliteStore(path));
    for (let n = 0; n < 12; n++) answered(await store.commit(aCommit(adding(aTerm(`tool.t${n}`)))));
    copyFileSync(path, copy);
    const log = readFileSync(`${path}-wal`);
    await store.close();
    return { path: copy, log, revisions: 12 };
  }
  async function openedWith(path: string, log: Uint8Array): Promise<number> {
    const here = temporaryPath();
    copyFileSync(path, here);
    writeFileSync(`${here}-wal`, log);
    const store = answered(await openSqliteStore(here));
    const verified = answered(await store.verify());
    expect((await store.listTerms({}, { first: 200 })).total).toBe(verified.revisions);
    await store.close();
    return verified.revisions;
  }

  it("opens as the whole writes before the cut, wherever it was cut", async () => {
    const { path, log, revisions } = await filledWithLog();
    // The schema stands in the first frames; a cut before its end leaves an empty store.
    const states = new Set<number>();
    for (let cut = 0; cut <= log.length; cut += Math.ceil(log.length / 60))
      states.add(await openedWith(path, log.subarray(0, cut)));
    states.add(await openedWith(path, log));
    expect(Math.max(...states)).toBe(revisions);
    expect(states.size).toBeGreaterThan(5);
  });

  it("opens whole where garbage follows the last write", async () => {
    const { path, log, revisions } = await filledWithLog();
    for (const length of [1, 24, 4096, 10_000])
      expect(await openedWith(path, Buffer.concat([log, Buffer.alloc(length, 0xa5)]))).toBe(revisions);
  });
});
