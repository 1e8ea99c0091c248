import { existsSync, openSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { isProblem } from "#server/domain/problem.ts";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { runNode } from "#tests/support/run-node.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { openLedger } from "../ledger.ts";
import { type Known, runClients } from "../run-clients.ts";
import { startScribeline } from "../scribeline-process.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";
import { mountSmallDisk } from "./small-disk.ts";

const FULL_TIMES_A_STORE = 5;
const DISK = 40_000_000;

/** Settings for a server on a disk that fills up: data, backups and its own log lie there. */
export const diskFull: Fault = {
  name: "disk-full",
  what: "the disk of a SQLite file full while clients write, while it is dumped or backed up, and when it is opened; then there is room again",
  times: 100,
  round: (random, times) =>
    inTemporaryFolder(async (folder) => {
      const disk = mountSmallDisk(join(folder, "disk"), DISK);
      if (disk === undefined) throw new Error("This fault mounts a small disk, which takes root");
      try {
        const settings = { SCRIBELINE_DATA: join(disk.folder, "data") };
        const log = openSync(join(disk.folder, "server.log"), "a");
        const server = await startScribeline(settings, [], log);
        const ledger = openLedger(join(folder, "ledger.jsonl"));
        const known: Known = new Map();
        const clients = runClients({
          ...{ doors: () => [server], ledger, random, known, run: "c", most: 9, pause: 10 },
        });
        let counts: Counts = NOTHING_COUNTED;
        for (let time = 0; time < Math.min(times, FULL_TIMES_A_STORE); time++) {
          await clients.kept(5 + random.below(20));
          disk.fill(random.below(400_000));
          await clients.refused("STORE_FULL", 5 + random.below(20));
          const script = random.pick(["server/dump-store.ts", "server/back-up-store.ts", undefined]);
          const findings = script === undefined ? [] : await keepOnFullDisk(script, disk.folder, settings);
          disk.makeRoom();
          await clients.kept(5);
          counts = addCounts(counts, {
            faults: 1,
            findings,
            also: script === undefined ? {} : { [script]: 1 },
          });
        }
        await clients.stop();
        const status = await server.stop();
        const findings = [...clients.untyped, ...(status === 0 ? [] : [`the server ended with ${status}`])];
        disk.fill(random.below(20_000));
        const onFull = await openSqliteStore(storeFile(settings.SCRIBELINE_DATA));
        if (!isProblem(onFull)) await onFull.close();
        else if (onFull.code !== "STORE_FULL")
          findings.push(`opened on a full disk: ${onFull.code} ${onFull.message}`);
        const also = { [isProblem(onFull) ? "not opened on a full disk" : "opened on a full disk"]: 1 };
        disk.makeRoom();
        const store = await openSqliteStore(storeFile(settings.SCRIBELINE_DATA));
        if (isProblem(store))
          return addCounts(counts, { findings: [...findings, `does not open: ${store.message}`] });
        const standing = await countStanding(ledger.entries(), store);
        await store.close();
        return addCounts(addCounts(counts, standing), { findings, also, slowest: clients.slowest() });
      } finally {
        disk.unmount();
      }
    }),
};

/** A dump or a backup that finds no room says so, and leaves nothing that looks like one. */
async function keepOnFullDisk(
  script: string,
  folder: string,
  settings: Readonly<Record<string, string>>,
): Promise<readonly string[]> {
  const place = join(folder, script.replaceAll(/\W/g, "-"));
  const { exit, err } = await runNode([script, place], settings).ended;
  const files = existsSync(place) && statSync(place).isDirectory() ? readdirSync(place) : [];
  const left = [
    ...[place, `${place}.part`].filter((each) => existsSync(each) && statSync(each).isFile()),
    ...files.filter((name) => /^backup-|^rehearsal/.test(name)),
  ];
  const isRefused = exit === 2 && /^[A-Z_]+: .*room/m.test(err);
  return [
    ...(isRefused ? [] : [`${script} on a full disk ended with ${exit}: ${err.slice(0, 400)}`]),
    ...left.map((each) => `${script} on a full disk left ${each}`),
  ];
}
