import { spawnSync } from "node:child_process";
import { closeSync, openSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, it } from "vitest";
import { holdFolder } from "#server/keeping/hold-folder.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { runNode } from "#tests/support/run-node.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";
import { mountSmallDisk } from "./small-disk.ts";

/** A file that is always full. */
const FULL = "/dev/full";

it("[T7] a log that finds no room does not end the program that writes it", async () => {
  const full = openSync(FULL, "w");
  const script = `const { logToStderr } = await import("./server/log-to-stderr.ts");
    for (let n = 0; n < 3; n++) {
      logToStderr({ level: "info", event: "test" });
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    process.stdout.write("goes on");`;
  const { exit, out } = await runNode(["--input-type=module", "-e", script], {}, full).ended;
  closeSync(full);
  expect([exit, out]).toEqual([0, "goes on"]);
});

it("[T7] a dump to standard output that finds no room is refused in one line", async () => {
  const path = temporaryPath();
  const store = answered(await openSqliteStore(path));
  answered(await store.commit(aCommit(adding(aTerm("tool.saw")))));
  await store.close();
  const full = openSync(FULL, "w");
  const { status, stderr } = spawnSync(process.execPath, ["server/dump-store.ts"], {
    env: { ...process.env, SCRIBELINE_DATA: dirname(path), npm_lifecycle_event: undefined },
    stdio: ["ignore", full, "pipe"],
    encoding: "utf8",
  });
  closeSync(full);
  expect(status).toBe(2);
  expect(stderr).toMatch(/^UNREADABLE_FILE: Standard output cannot be written .*; make room, .*\n$/);
});

it.runIf(process.getuid?.() === 0)("[T7] a folder of backups on a full disk is told as such", async () => {
  await inTemporaryFolder(async (folder) => {
    const disk = mountSmallDisk(join(folder, "disk"), 1_000_000);
    if (disk === undefined) throw new Error("No disk could be mounted");
    try {
      disk.fill(0);
      expect(refusedWith(holdFolder(disk.folder))).toBe("STORE_FULL");
      disk.makeRoom();
      const leave = answered(holdFolder(disk.folder));
      leave();
    } finally {
      disk.unmount();
    }
  });
});
