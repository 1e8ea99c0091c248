import { appendFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { MISSING_MEANS } from "#tests/support/closing-line.ts";
import { strike } from "../strike.ts";
import { clockSetOnSqlite } from "./clock-set.ts";
import { corruptPage } from "./corrupt-page.ts";
import { diskFull } from "./disk-full.ts";
import { killOneOfTwoOnSqlite } from "./kill-one-of-two.ts";
import { killServer } from "./kill-server.ts";
import { lockedFile } from "./locked-file.ts";
import { openAtOnceOnSqlite } from "./open-at-once.ts";
import { tornLog } from "./torn-log.ts";

const mayMount = process.getuid?.() === 0;
if (!mayMount)
  appendFileSync(MISSING_MEANS, "a disk that is full (the tests mount a small one, which takes root)\n");

/** The same faults in number: npm run faults. */
describe("a store in a file loses nothing that was acknowledged, doubles nothing, and keeps nothing that was refused", () => {
  it("[T1] [T2] when the server is killed while it writes", async () => {
    const counts = await strike(killServer, 3);
    expect(counts).toMatchObject({ faults: 3, findings: [] });
    expect(counts.kept).toBeGreaterThan(10);
  });

  it("[T6] when one of two servers is killed", async () => {
    const counts = await strike(killOneOfTwoOnSqlite, 1);
    expect(counts).toMatchObject({ faults: 1, findings: [] });
    expect(counts.kept).toBeGreaterThan(10);
  });

  it("[T9] when power goes while the log is written, or moved into the file", async () => {
    const counts = await strike(tornLog, 60);
    expect(counts).toMatchObject({ faults: 60, findings: [] });
    expect(counts.unanswered).toBeGreaterThan(0);
  });

  it("[T8] or says that it is damaged when pages were overwritten", async () => {
    const counts = await strike(corruptPage, 30);
    expect(counts).toMatchObject({ faults: 30, findings: [] });
    expect(Object.keys(counts.also).filter((what) => what.includes("found")).length).toBeGreaterThan(2);
  });

  it.runIf(mayMount)("[T7] when the disk is full, and goes on when there is room", async () => {
    const counts = await strike(diskFull, 1);
    expect(counts).toMatchObject({ faults: 1, findings: [] });
    expect(counts.refused).toBeGreaterThan(4);
  });

  it("[T5] when another program keeps the file locked, which requests are told in time", async () => {
    const counts = await strike(lockedFile, 1, undefined, 4);
    expect(counts).toMatchObject({ faults: 1, findings: [] });
    expect(counts.also["reads meanwhile"]).toBeGreaterThan(5);
  });

  it("[T10] when the clock is set", async () => {
    const counts = await strike(clockSetOnSqlite, 5);
    expect(counts).toMatchObject({ faults: 5, findings: [] });
    expect(counts.also["set back"]).toBeGreaterThan(0);
  });

  it("[T11] when two programs seed it, or bring it up to date, at once", async () => {
    const counts = await strike(openAtOnceOnSqlite, 2);
    expect(counts).toMatchObject({ faults: 2, findings: [] });
  });
});
