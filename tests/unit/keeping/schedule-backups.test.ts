import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { type BackupState, keepBackupState } from "#server/keeping/backup-state.ts";
import { isDue, scheduleBackups } from "#server/keeping/schedule-backups.ts";
import { tellBackups } from "#server/keeping/tell-backups.ts";

const root = mkdtempSync(join(tmpdir(), "scribeline-schedule-"));
afterAll(() => rmSync(root, { recursive: true, force: true }));
let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(root, "folder-"));
});

const good = (at: string): NonNullable<BackupState["lastGood"]> => ({
  ...{ file: "backup-000001-20261125T100000Z.jsonl.zst", at, sha256: "0".repeat(64), bytes: 500 },
  ...{ revisions: 1, examinations: 0, seconds: 1.5 },
});
const state = (parts: Omit<BackupState, "format" | "version">): BackupState => ({
  ...{ format: "scribeline/backups", version: 1 },
  ...parts,
});
const at = (hour: number, minute = 0): string => new Date(Date.UTC(2026, 10, 25, hour, minute)).toISOString();

describe("[S59] a backup is due", () => {
  const now = new Date(at(12));
  it.each<readonly [string, boolean, BackupState | undefined]>([
    ["where none was made", true, undefined],
    [
      "when the newest good one is as old as it may be",
      true,
      state({ lastTry: { at: at(10) }, lastGood: good(at(10)) }),
    ],
    ["not before", false, state({ lastTry: { at: at(10, 1) }, lastGood: good(at(10, 1)) })],
    [
      "not at once again after one that failed",
      false,
      state({ lastTry: { at: at(11, 46), code: "STORE_FULL" }, lastGood: good(at(9)) }),
    ],
    [
      "a quarter of an hour after one that failed",
      true,
      state({ lastTry: { at: at(11, 45), code: "STORE_FULL" }, lastGood: good(at(9)) }),
    ],
    [
      "not after one that failed while a good one is young",
      false,
      state({ lastTry: { at: at(11, 0), code: "STORE_FULL" }, lastGood: good(at(10, 30)) }),
    ],
    [
      "where the clock was set back to before the newest good one",
      true,
      state({ lastTry: { at: at(13) }, lastGood: good(at(13)) }),
    ],
  ])("%s", (_, due, known) => {
    expect(isDue(known, now, 2)).toBe(due);
  });
});

describe("[S59] scheduled backups", () => {
  const waitFor = async (what: () => boolean): Promise<void> => {
    for (let tries = 0; !what() && tries < 400; tries++)
      await new Promise((resolve) => setTimeout(resolve, 5));
    expect(what()).toBe(true);
  };

  it("are made when due, one at a time, and told in the log with what came of them", async () => {
    let [runs, hour] = [0, 0];
    const lines: object[] = [];
    const end = scheduleBackups({
      ...{ folder, hours: 2, lookEvery: 2 },
      now: () => new Date(at(hour)),
      log: (line) => lines.push(line),
      run: async () => {
        runs++;
        if (runs === 2)
          await keepBackupState(folder, {
            lastTry: { at: at(hour), code: "STORE_FULL", message: "The disk is full." },
            lastGood: good(at(0)),
          });
        else await keepBackupState(folder, { lastTry: { at: at(hour) }, lastGood: good(at(hour)) });
      },
    });
    await waitFor(() => lines.length === 1);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(runs).toBe(1);
    hour = 2;
    await waitFor(() => lines.length === 2);
    hour = 3;
    await waitFor(() => lines.length === 3);
    end();
    expect(lines).toEqual([
      { level: "info", event: "backup", ...good(at(0)) },
      { level: "error", event: "backup", code: "STORE_FULL", message: "The disk is full." },
      { level: "info", event: "backup", ...good(at(3)) },
    ]);
  });

  it("say nothing of what another server has made meanwhile, and do not try at once again where nothing was kept", async () => {
    let runs = 0;
    const lines: object[] = [];
    const end = scheduleBackups({
      ...{ folder, hours: 2, lookEvery: 20 },
      now: () => new Date(at(0)),
      log: (line) => lines.push(line),
      run: async () => {
        runs++;
      },
    });
    await new Promise((resolve) => setTimeout(resolve, 150));
    end();
    expect(runs).toBe(1);
    expect(lines).toEqual([]);
  });

  it("are told as numbers", async () => {
    expect(await tellBackups(folder)()).toEqual([]);
    await keepBackupState(folder, { lastTry: { at: at(3), code: "STORE_FULL" }, lastGood: good(at(2)) });
    const told = await tellBackups(folder)();
    expect(
      Object.fromEntries(
        told.map(({ name, samples }) => [name, "value" in (samples[0] ?? {}) ? samples[0] : undefined]),
      ),
    ).toEqual({
      scribeline_backup_failed: { value: 1 },
      scribeline_backup_good_timestamp_seconds: { value: Date.UTC(2026, 10, 25, 2) / 1000 },
      scribeline_backup_bytes: { value: 500 },
      scribeline_backup_duration_seconds: { value: 1.5 },
    });
  });
});
