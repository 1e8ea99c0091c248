import { parseArgs } from "node:util";
import { buildWeb, isWebStale } from "./build-web.ts";
import { readConfig } from "./config.ts";
import { isProblem } from "./domain/problem.ts";
import { printUrl } from "./http/listen.ts";
import { logToStderr } from "./log-to-stderr.ts";
import { startServer } from "./main.ts";
import { openData, openTables, printPlace } from "./open-data.ts";
import { runBackups } from "./run-backups.ts";
import { verifyApart } from "./verify-apart.ts";

/**
 * `npm start`: builds what is missing, seeds a new store, serves on 127.0.0.1 until it is told to stop. With
 * `-- --no-build` it serves the client as it was last built, for work on it with `npm run dev` beside the server.
 */
async function start(): Promise<void> {
  // What is said there is for people; a full disk behind it must not end the server.
  process.stdout.on("error", () => {});
  const config = readConfig(process.env);
  if (!("port" in config)) return fail(...config.map((problem) => problem.message));
  const { values } = parseArgs({ options: { "no-build": { type: "boolean", default: false } } });
  if (!values["no-build"] && isWebStale(config.webFolder)) {
    console.log("Building the web client …");
    await buildWeb(config.webFolder);
  }
  const tables = await openTables();
  if (isProblem(tables)) return fail(tables.message);
  const data = await openData(config);
  if (isProblem(data)) return fail(data.message);
  if (data.updated > 0)
    console.log(`Brought the graph up to this seed, in ${data.updated} edits as a revision of its own`);
  if (data.seeded) console.log(`Seeded a new graph in ${printPlace(config)}`);
  const server = await startServer({
    ...{ config, store: data.store, tables, log: logToStderr, verify: verifyApart },
  }).catch(portTaken);
  if (server === undefined)
    return fail(
      `Port ${config.port} of ${config.address} is taken, by another program or by Scribeline already running (${printUrl(config.address, config.port)}). Stop that one, or choose another port: SCRIBELINE_PORT=${config.port + 1} npm start`,
    );
  console.log(`Scribeline is at ${server.url} (Ctrl+C stops it; data in ${printPlace(config)})`);
  const endBackups = runBackups(config, logToStderr);
  let signals = 0;
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.on(signal, () => {
      signals++;
      if (signals > 2) process.exit(1);
      endBackups();
      // At a keyboard nobody waits: a drain is for what sends requests here. A second signal cuts it short.
      server.stop(signal === "SIGTERM" && signals === 1 ? config.drain : 0).then(
        () => process.exit(0),
        (error: unknown) => fail(String(error)),
      );
    });
}

function portTaken(error: NodeJS.ErrnoException): undefined {
  if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
}

function fail(...messages: readonly string[]): void {
  for (const message of messages) console.error(message);
  process.exit(1);
}

start().catch((error: unknown) => fail(error instanceof Error ? error.message : String(error)));
