import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readConfig } from "#server/config.ts";
import { isProblem } from "#server/domain/problem.ts";
import { type RunningServer, startServer } from "#server/main.ts";
import { openData, openTables } from "#server/open-data.ts";
import type { Store } from "#server/ports/store.ts";

export interface Scribeline extends RunningServer {
  /** Its data folder; gone after `stop`. */
  readonly folder: string;
  /** What the server reads and writes: for changes that no page can make yet. */
  readonly store: Store;
  /** What went wrong inside while it ran. */
  readonly logged: string[];
}

/** The longest that a page may wait for an answer where a browser, and much else, runs beside the server, in milliseconds. */
export const PATIENT = 60_000;

/** The server as `npm start` runs it, on a free port: a new folder with the seed graph and the demonstrations, the built client. */
export async function openScribeline(): Promise<Scribeline> {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-e2e-"));
  const config = readConfig({
    ...{ SCRIBELINE_PORT: "0", SCRIBELINE_DATA: folder },
    SCRIBELINE_DEADLINE: String(PATIENT),
  });
  if (!("port" in config)) throw new Error(config.map(({ message }) => message).join(" "));
  if (!existsSync(join(config.webFolder, "index.html")))
    throw new Error("web/dist is missing: run npm run build first");
  const data = await openData({ dataFolder: folder });
  if (isProblem(data)) throw new Error(data.message);
  const tables = await openTables();
  if (isProblem(tables)) throw new Error(tables.message);
  const logged: string[] = [];
  const server = await startServer({
    config,
    store: data.store,
    tables,
    log: (line) => line.level !== "info" && logged.push(JSON.stringify(line)),
  });
  await server.built;
  return {
    url: server.url,
    built: server.built,
    folder,
    store: data.store,
    logged,
    stop: async () => {
      await server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
