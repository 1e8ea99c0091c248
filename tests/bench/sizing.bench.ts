import { spawn } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { quantile } from "./figure.ts";
import type { Bench } from "./measure.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const CLIENTS = 4;
const ASKED = 400;

/**
 * What one server needs for a data folder: `SIZING_DATA` names folders, with commas between; each is copied first. Prints what lies on the disk,
 * how long the start takes, memory after it and after work, and what a request of a mix costs in processor time.
 */
export const bench: Bench = async () => {
  const folders = (process.env["SIZING_DATA"] ?? "").split(",").filter((folder) => folder !== "");
  if (folders.length === 0) {
    console.log("  not measured: SIZING_DATA names no data folder (npm run generate makes some)");
    return [];
  }
  console.log(
    "  folder | disk MB | start s | memory MB: started, worked, most | ms of processor a request | p50, p95, p99 ms",
  );
  for (const folder of folders) await measure(folder);
  return [];
};

async function measure(original: string): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-sizing-"));
  try {
    cpSync(original, folder, { recursive: true });
    const port = await freePort();
    const begun = performance.now();
    const child = spawn(process.execPath, ["server/start.ts", "--no-build"], {
      cwd: ROOT,
      env: { ...process.env, NODE_ENV: "production", SCRIBELINE_DATA: folder, SCRIBELINE_PORT: String(port) },
      stdio: ["ignore", "ignore", "inherit"],
    });
    try {
      const url = `http://127.0.0.1:${port}`;
      await untilReady(url, child);
      const start = (performance.now() - begun) / 1000;
      await untilRested(url);
      const started = await numbers(url);
      const ids = await examinations(url);
      await searchFirst(url);
      const before = await numbers(url);
      const times = await work(url, ids);
      const after = await numbers(url);
      const cost = ((cpuOf(after) - cpuOf(before)) * 1000) / times.length;
      const most = Number(/VmHWM:\s+(\d+)/.exec(await statusOf(child.pid))?.[1] ?? 0) / 1000;
      console.log(
        `  ${[
          basename(original),
          weigh(folder).toFixed(0),
          start.toFixed(1),
          [memoryOf(started), memoryOf(after), most].map((mb) => mb.toFixed(0)).join(", "),
          cost.toFixed(1),
          [0.5, 0.95, 0.99].map((share) => quantile(times, share).toFixed(0)).join(", "),
        ].join(" | ")}`,
      );
    } finally {
      const ended = new Promise((resolve) => child.once("exit", resolve));
      if (child.exitCode === null && child.kill("SIGTERM")) await ended;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Numbers = ReadonlyMap<string, number>;
const cpuOf = (of: Numbers): number => of.get("process_cpu_seconds_total") ?? Number.NaN;
const memoryOf = (of: Numbers): number => (of.get("process_resident_memory_bytes") ?? Number.NaN) / 1e6;

async function numbers(url: string): Promise<Numbers> {
  const text = await (await fetch(`${url}/metrics`)).text();
  return new Map(
    [...text.matchAll(/^([a-z_]+) (\S+)$/gm)].map(([, name = "", value]) => [name, Number(value)]),
  );
}

async function ask(url: string, query: string): Promise<unknown> {
  const answer = await fetch(`${url}/graphql`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ query }),
  });
  const { data, errors } = (await answer.json()) as { readonly data?: unknown; readonly errors?: unknown };
  if (errors) throw new Error(JSON.stringify(errors));
  return data;
}

async function examinations(url: string): Promise<readonly string[]> {
  const data = (await ask(url, "{ examinations(first: 200) { edges { node { id } } } }")) as {
    readonly examinations: { readonly edges: readonly { readonly node: { readonly id: string } }[] };
  };
  return data.examinations.edges.map(({ node }) => node.id);
}

/** The first search reads all terms; it may be given up while it does, and what was read stays. */
async function searchFirst(url: string): Promise<void> {
  const begun = performance.now();
  for (let tries = 1; tries <= 20; tries++) {
    const answered = await ask(url, '{ search(words: "saw", first: 1) { __typename } }').then(
      () => true,
      () => false,
    );
    const took = ((performance.now() - begun) / 1000).toFixed(1);
    if (answered) return console.log(`    first search: ${took} s, answered at try ${tries}`);
  }
  throw new Error("No search was answered");
}

/** Until the stored examinations are examined on the graph as it stands, which begins at each start. */
async function untilRested(url: string): Promise<void> {
  do await pause(2000);
  while (((await numbers(url)).get("scribeline_standings_waiting") ?? 0) > 0);
}

/** Of five requests: two examine a stored piece with its words, two search, one reads a list. */
async function work(url: string, ids: readonly string[]): Promise<readonly number[]> {
  const times: number[] = [];
  const byKind = new Map<string, number[]>();
  let next = 0;
  const one = async (n: number): Promise<void> => {
    const id = ids[n % ids.length];
    const query = [
      `{ examination(id: "${id}") { examined { ... on Examined { report words { __typename } } } } }`,
      `{ search(words: "${["saw", "plane", "dovetail", "oak"][n % 4]} ${n % 97}", first: 12) { __typename } }`,
      `{ examination(id: "${id}") { piece { title } examined { ... on Examined { report } } } }`,
      `{ search(words: "${["pine", "lock", "screw", "veneer"][n % 4]}", first: 12) { __typename } }`,
      "{ claims(first: 50) { totalCount edges { node { id } } } }",
    ][n % 5] as string;
    const begun = performance.now();
    await ask(url, query);
    const took = performance.now() - begun;
    times.push(took);
    const kind = /\w+/.exec(query)?.[0] ?? "";
    byKind.set(kind, [...(byKind.get(kind) ?? []), took]);
  };
  const client = async (): Promise<void> => {
    for (let n = next++; n < ASKED; n = next++) await one(n);
  };
  await Promise.all(Array.from({ length: CLIENTS }, client));
  for (const [kind, took] of byKind)
    console.log(
      `    ${kind}: median ${quantile(took, 0.5).toFixed(0)} ms, 95 % ${quantile(took, 0.95).toFixed(0)} ms`,
    );
  return times;
}

async function untilReady(url: string, child: { readonly exitCode: number | null }): Promise<void> {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`The server ended with ${child.exitCode}`);
    if (
      await fetch(`${url}/readyz`).then(
        ({ ok }) => ok,
        () => false,
      )
    )
      return;
    await pause(50);
  }
}

const statusOf = async (pid: number | undefined): Promise<string> => {
  const { readFile } = await import("node:fs/promises");
  return readFile(`/proc/${pid}/status`, "utf8").catch(() => "");
};

const weigh = (folder: string): number =>
  readdirSync(folder).reduce((sum, file) => sum + statSync(join(folder, file)).size, 0) / 1e6;

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  return typeof address === "object" && address ? address.port : 0;
}
