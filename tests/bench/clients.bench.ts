import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { Agent } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { planGraph } from "#server/generator/graph-plan.ts";
import { randomSourceOf } from "#server/generator/random-source.ts";
import { send } from "#tests/support/open-http.ts";
import { type ServerProcess, startServerProcess } from "#tests/support/server-process.ts";
import { quantile } from "./figure.ts";
import type { Bench } from "./measure.ts";
import { dataFolderOf, EXAMINATIONS, sizes, wishesOf } from "./scale/bench-graph.ts";
import { type Deed, type Visitor, visitorsOf } from "./scale/visitor.ts";

const CLIENTS = 200;
const WARM_UP_SECONDS = 15;
const seconds = Number(process.env["BENCH_SECONDS"] || 60);
/** Milliseconds that a person reads before the next request, on the average; then none, to see what gives way first. */
const READING = [3_000, 0] as const;

interface Answered {
  readonly deed: Deed;
  readonly ms: number;
  readonly failed?: string;
}

/** 200 people at one server process over HTTP, reading as people do, and then without a pause. */
export const bench: Bench = async () => {
  for (const claims of sizes("100000")) {
    const folder = mkdtempSync(join(tmpdir(), "scribeline-clients-"));
    cpSync(await dataFolderOf(wishesOf(claims)), folder, { recursive: true });
    const start = performance.now();
    const server = await startServerProcess({ SCRIBELINE_DATA: folder });
    try {
      console.log(
        `  ${claims} claims: the server was there after ${((performance.now() - start) / 1000).toFixed(1)} s`,
      );
      const first = await untilSearched(server.url, claims);
      console.log(`  a first search was answered after ${first.toFixed(1)} s more; people come only now`);
      for (const reading of READING) await visit(server, claims, reading);
    } finally {
      server.kill("SIGTERM");
      await server.ended;
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return [];
};

/** The words of a large graph are indexed when they are first asked for. Gives the seconds until a search is answered. */
async function untilSearched(url: string, claims: number): Promise<number> {
  const start = performance.now();
  const query = `{ search(words: "joint", first: 4) { score } }`;
  for (let tries = 0; tries < 60; tries++) {
    const { text } = await send(`${url}graphql`, {
      ...{ method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ query }) },
    });
    if (JSON.parse(text).errors === undefined) return (performance.now() - start) / 1000;
  }
  throw new Error(`No search at ${claims} claims was answered`);
}

async function visit(server: ServerProcess, claims: number, reading: number): Promise<void> {
  const visitorOf = visitorsOf(planGraph(wishesOf(claims)), EXAMINATIONS);
  const agent = new Agent({ keepAlive: true, maxSockets: CLIENTS });
  const answers: Answered[] = [];
  let counting = false;
  let ended = false;
  const come = async (number: number): Promise<void> => {
    // Each of the two rounds has people of its own, so that their pieces are at their first version.
    const visitor = visitorOf(number + (reading === 0 ? CLIENTS : 0));
    const random = randomSourceOf(12, number);
    await sleep(random.below(Math.max(1, reading)));
    while (!ended) {
      const answer = await ask(server.url, visitor, agent);
      if (counting && !ended) answers.push(answer);
      await sleep(reading === 0 ? 0 : -Math.log(1 - random.below(1e6) / 1e6) * reading);
    }
  };
  const people = Array.from({ length: CLIENTS }, (_, number) => come(number));
  await sleep(WARM_UP_SECONDS * 1000);
  const [before, startedAt] = [await readMetrics(server.url), performance.now()];
  counting = true;
  await sleep(seconds * 1000);
  const took = (performance.now() - startedAt) / 1000;
  const after = await readMetrics(server.url);
  ended = true;
  await Promise.all(people);
  agent.destroy();
  say(answers, reading, took, {
    busy: ((after["process_cpu_seconds_total"] ?? 0) - (before["process_cpu_seconds_total"] ?? 0)) / took,
    memory: (after["process_resident_memory_bytes"] ?? 0) / 1e6,
  });
}

async function ask(url: string, visitor: Visitor, agent: Agent): Promise<Answered> {
  const request = visitor.next();
  const start = performance.now();
  const done = (failed?: string): Answered => ({
    ...{ deed: request.deed, ms: performance.now() - start },
    ...(failed === undefined ? {} : { failed }),
  });
  try {
    const { status, text } = await send(`${url}graphql`, {
      ...{ method: "POST", headers: { "Content-Type": "application/json" }, agent },
      body: JSON.stringify({ query: request.query, variables: request.variables }),
    });
    const answer = done();
    const { data, errors } = JSON.parse(text);
    if (status !== 200 || errors) return { ...answer, failed: `${status} ${text.slice(0, 300)}` };
    if (text.includes('"__typename":"Refused"')) return { ...answer, failed: text.slice(0, 300) };
    visitor.told(request, data);
    return answer;
  } catch (error) {
    return done(String(error));
  }
}

async function readMetrics(url: string): Promise<Readonly<Record<string, number>>> {
  const { text } = await send(`${url}metrics`);
  const lines = text.split("\n").filter((line) => line !== "" && !line.startsWith("#"));
  return Object.fromEntries(lines.map((line) => [line.split(" ")[0], Number(line.split(" ")[1])]));
}

function say(
  answers: readonly Answered[],
  reading: number,
  took: number,
  { busy, memory }: { readonly busy: number; readonly memory: number },
): void {
  const failed = answers.flatMap(({ failed }) => failed ?? []);
  console.log(
    `  ${CLIENTS} clients, ${reading / 1000} s between requests: ${(answers.length / took).toFixed(0)} requests a second, ${failed.length} errors; the server used ${busy.toFixed(2)} processors and ${memory.toFixed(0)} MB`,
  );
  for (const text of failed.slice(0, 3)) console.log(`    error: ${text}`);
  const kinds = Map.groupBy(answers, ({ deed }) => deed as string);
  for (const [deed, some] of [["all", answers] as const, ...[...kinds].sort()]) {
    const times = some.map(({ ms }) => ms);
    const at = (share: number): string => quantile(times, share).toFixed(0);
    console.log(`    ${deed} (${some.length}): p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, p99 ${at(0.99)} ms`);
  }
}
