import { readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isProblem } from "#server/domain/problem.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { countStanding } from "../count-standing.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import type { Entry } from "../ledger.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";
import { openWriter, send, type Writer } from "../write-some.ts";

/** Losses of power of one store. */
const LOSSES_A_STORE = 100;
/** Acknowledged writes after each of which power may be lost. */
const MOMENTS = 12;
/** Unit in which a disk keeps or loses what was not flushed, in bytes. */
const SECTOR = 512;
/** SQLite moves its log into the file at 1,000 pages, 4.1 MB: half of the stores are let grow until just before that. */
const NEARLY_MOVED = 3_700_000;
const MOST_WRITES = 200;

/** The files as they lay on the disk when a write was acknowledged: all of it was flushed by then. */
interface Disk {
  readonly file: Buffer;
  readonly log: Buffer;
}

export const tornLog: Fault = {
  name: "torn-log",
  what: "loss of power within a write to a SQLite file: the log, or the file while the log is moved into it, was kept in part",
  times: 5000,
  round: (random, losses) =>
    inTemporaryFolder(async (folder) => {
      const path = join(folder, "scribeline.sqlite");
      const store = answered(await openSqliteStore(path));
      const writer = openWriter(store, random, "w");
      const isNearMoving = random.chance(0.5);
      const most = isNearMoving ? MOST_WRITES : 1 + random.below(MOST_WRITES);
      do await writer.next();
      while (writer.entries.length < most && !(isNearMoving && statSync(`${path}-wal`).size > NEARLY_MOVED));
      const before = writer.entries.length;
      const disks: Disk[] = [readDisk(path)];
      for (let n = 0; n < MOMENTS; n++) {
        await writer.next();
        disks.push(readDisk(path));
      }
      await store.close();
      let counts = NOTHING_COUNTED;
      for (let loss = 0; loss < Math.min(losses, LOSSES_A_STORE); loss++) {
        const at = random.below(MOMENTS);
        const [then, after] = [disks[at], disks[at + 1]] as [Disk, Disk];
        counts = addCounts(
          counts,
          await losePower(join(folder, `lost-${loss}.sqlite`), then, after, writer, before + at, random),
        );
      }
      return counts;
    }),
};

const readDisk = (path: string): Disk => ({ file: readFileSync(path), log: readFileSync(`${path}-wal`) });

/** Power goes while the write after the first `acknowledged` ones is being kept. */
async function losePower(
  path: string,
  then: Disk,
  after: Disk,
  writer: Writer,
  acknowledged: number,
  random: RandomSource,
): Promise<Counts> {
  const isMoving = !after.file.equals(then.file) && random.chance(0.5);
  // Before the log is moved into the file it has been flushed.
  const log = isMoving ? after.log : keepPart(then.log, after.log, random);
  writeFileSync(`${path}-wal`, log);
  writeFileSync(path, isMoving ? keepPart(then.file, after.file, random) : then.file);
  const entries: Entry[] = writer.entries
    .slice(0, acknowledged + 1)
    .map((entry, n) => (n < acknowledged || isMoving ? entry : { write: entry.write, sentAt: entry.sentAt }));
  const store = await openSqliteStore(path);
  const also = { [isMoving ? "while the log was moved" : "in the log"]: 1 };
  if (isProblem(store))
    return { ...NOTHING_COUNTED, faults: 1, also, findings: [`does not open: ${store.message}`] };
  const counted = await countStanding(entries, store);
  const next = await send(store, { key: "next", does: "commit", things: 3 });
  const verified = await store.verify();
  await store.close();
  const findings = [
    ...counted.findings,
    ...(next.is === "kept" && !isProblem(verified) ? [] : ["it does not take and verify one write more"]),
  ];
  return addCounts({ ...NOTHING_COUNTED, faults: 1, also }, { ...counted, findings });
}

/**
 * What a disk holds that was to go from one content to another and was broken off: each sector either, or spoilt where it
 * was written to. Bytes beside those are safe, as SQLite assumes of a disk ("powersafe overwrite").
 */
function keepPart(then: Buffer, after: Buffer, random: RandomSource): Buffer {
  const way = random.pick(["cut", "sectors", "flips", "garbage"] as const);
  const kept = random.pick([0.5, 0.9, 0.99, 1, random.below(101) / 100]);
  const length =
    way === "cut" || random.chance(0.3)
      ? then.length + random.below(Math.max(0, after.length - then.length) + 1)
      : Math.max(then.length, after.length);
  const disk = Buffer.alloc(length);
  then.copy(disk);
  const isWritten = (byte: number): boolean => byte >= then.length || then[byte] !== after[byte];
  const changed: number[] = [];
  for (let at = 0; at < length; at += SECTOR)
    if (!sector(then, at).equals(sector(after, at))) changed.push(at);
  for (const [n, at] of changed.entries()) {
    const isKept = way === "cut" ? n < kept * changed.length : way === "flips" || random.chance(kept);
    if (isKept) after.copy(disk, at, at, Math.min(at + SECTOR, length));
    else if (way === "garbage")
      for (let byte = at; byte < Math.min(at + SECTOR, length); byte++)
        if (isWritten(byte)) disk[byte] = random.below(256);
  }
  if (way === "flips" && changed.length > 0)
    for (let flip = 0; flip <= random.below(4); flip++) {
      const byte = Math.min(random.pick(changed) + random.below(SECTOR), length - 1);
      if (isWritten(byte)) disk[byte] = (disk[byte] ?? 0) ^ (1 << random.below(8));
    }
  return disk;
}

const sector = (of: Buffer, at: number): Buffer => of.subarray(at, at + SECTOR);
