import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { quantile, sayFigure } from "./figure.ts";
import type { Bench } from "./measure.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const STARTS = 5;

/** Seconds from the command until the address is printed; the server is stopped again. */
function timeStart(data: string): Promise<number> {
  const begun = performance.now();
  const child = spawn("npm", ["start", "--", "--no-build"], {
    cwd: ROOT,
    env: { ...process.env, SCRIBELINE_DATA: data, SCRIBELINE_PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
    detached: true,
  });
  return new Promise((resolve, reject) => {
    let took: number | undefined;
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      if (took !== undefined || !text.includes("Scribeline is at ")) return;
      took = (performance.now() - begun) / 1000;
      process.kill(-(child.pid as number), "SIGTERM");
    });
    child.once("close", () =>
      took === undefined ? reject(new Error("The server did not start")) : resolve(took),
    );
  });
}

/** Bytes of all files of a folder, in MB of 1,000,000. */
const weigh = (folder: string): number =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0) / 1e6;

/** How long `npm start` takes with the pages built, on a new folder and on one that is there, and what lies on the disk. */
export const bench: Bench = async () => {
  const data = mkdtempSync(join(tmpdir(), "scribeline-start-"));
  try {
    sayFigure({
      what: "npm start on a new folder, which is seeded",
      value: await timeStart(data),
      unit: "s",
    });
    const times: number[] = [];
    for (let n = 0; n < STARTS; n++) times.push(await timeStart(data));
    sayFigure({
      what: `npm start on a store that is there, median of ${STARTS}`,
      value: quantile(times, 0.5),
      unit: "s",
    });
    sayFigure({ what: "the store with the seed graph, stopped", value: weigh(data), unit: "MB" });
    sayFigure({ what: "the built pages (web/dist)", value: weigh(join(ROOT, "web/dist")), unit: "MB" });
  } finally {
    rmSync(data, { recursive: true, force: true });
  }
  return [];
};
