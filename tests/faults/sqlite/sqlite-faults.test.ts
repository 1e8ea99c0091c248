import { describe, expect, it } from "vitest";
import { strike } from "../strike.ts";
import { corruptPage } from "./corrupt-page.ts";
import { killServer } from "./kill-server.ts";
import { tornLog } from "./torn-log.ts";

/** The same faults in number: npm run faults. */
describe("a store in a file loses nothing that was acknowledged, doubles nothing, and keeps nothing that was refused", () => {
  it("[T1] [T2] when the server is killed while it writes", async () => {
    const counts = await strike(killServer, 3);
    expect(counts).toMatchObject({ faults: 3, findings: [] });
    expect(counts.kept).toBeGreaterThan(10);
  });

  it("[T9] when power goes while the log is written, or moved into the file", async () => {
    const counts = await strike(tornLog, 60);
    expect(counts).toMatchObject({ faults: 60, findings: [] });
    expect(counts.unanswered).toBeGreaterThan(0);
  });

  it("[T8] or says that it is damaged when pages were overwritten", async () => {
    const counts = await strike(corruptPage, 50);
    expect(counts).toMatchObject({ faults: 50, findings: [] });
    expect(Object.keys(counts.also).filter((what) => what.includes("found")).length).toBeGreaterThan(2);
  });
});
