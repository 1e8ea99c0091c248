import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openHttp, post } from "#tests/support/open-http.ts";
import { quantile } from "./figure.ts";
import { type Bench, median, type Ratio } from "./measure.ts";
import { dataFolderOf, sizes, wishesOf } from "./scale/bench-graph.ts";
import { readPageOperations } from "./scale/page-operations.ts";
import { whatIsRead } from "./what-is-read.ts";

const ROUNDS = 12;
/** Requests that are sent before any is counted. */
const WARM_UP = 3;
/** What a read may take at most at any size, computing, and what it may grow by from the smallest graph. */
const MOST_MS = 50;
const GROWTH = 3;
/** Of an operation that takes longer than this in all, no more rounds are taken. */
const LONGEST = 60_000;
/** And what is made ahead is waited for as long; a single request is given up after `LONGEST`. */
const LONGEST_WAIT = 180_000;

/** Milliseconds that each request took to compute. */
type Computed = ReadonlyMap<string, readonly number[]>;

/**
 * Every query that a page sends, at a server, by what it computes: wall time would tell more of the other programs of the
 * machine. `READS` names some of them alone.
 */
export const bench: Bench = async () => {
  const measured: { readonly claims: number; readonly computed: Computed }[] = [];
  for (const claims of sizes("10000,1000000")) measured.push({ claims, computed: await measureAt(claims) });
  const [small, large] = [measured[0], measured.at(-1)];
  if (small === undefined || large === undefined || small === large) return [];
  return [...large.computed].flatMap(([name, times]): readonly Ratio[] => {
    const before = small.computed.get(name);
    if (before === undefined) return [];
    return [
      {
        what: `${name} at ${large.claims} claims, computing`,
        against: `the same at ${small.claims}`,
        ...{ cost: median(times), costAgainst: median(before), atMost: GROWTH },
      },
    ];
  });
};

async function measureAt(claims: number): Promise<Computed> {
  const folder = await dataFolderOf(wishesOf(claims));
  const opening = performance.now();
  const store = answered(await openSqliteStore(join(folder, "scribeline.sqlite")));
  console.log(`  ${claims} claims, opened in ${((performance.now() - opening) / 1000).toFixed(1)} s`);
  const start = process.cpuUsage();
  const server = await openHttp([], { deadline: LONGEST }, store);
  const queryOf = readPageOperations();
  const asked = (await whatIsRead(store)).filter(([name]) => isWanted(name));
  if (!(await untilIdle()))
    console.log("  not all was made ahead by then: what is computed besides counts with each request");
  const made = process.cpuUsage(start);
  const { rss } = process.memoryUsage();
  console.log(
    `  made ahead in ${((made.user + made.system) / 1e6).toFixed(1)} s of computing; ${(rss / 1e6).toFixed(0)} MB in all`,
  );
  const computed = new Map<string, readonly number[]>();
  for (const [name, variables] of asked) {
    const query = queryOf(name);
    const times: number[] = [];
    let bytes = 0;
    let givenUp = 0;
    const begun = performance.now();
    for (let n = 0; n < WARM_UP + ROUNDS && performance.now() - begun < LONGEST; n++) {
      const before = process.cpuUsage();
      const { text } = await post(server.url, { operationName: name, query, variables: variables(n) });
      const { user, system } = process.cpuUsage(before);
      const { errors } = JSON.parse(text);
      if (errors?.every(isTooLate)) givenUp++;
      else if (errors) throw new Error(`${name}: ${JSON.stringify(errors).slice(0, 300)}`);
      if (n === 0 || n >= WARM_UP) times.push((user + system) / 1000);
      bytes = Math.max(bytes, text.length);
    }
    const [first = 0, ...rest] = times;
    if (rest.length === 0) rest.push(first);
    const p95 = quantile(rest, 0.95);
    console.log(
      `    ${p95 <= MOST_MS ? "within" : "OVER  "} ${name}: half ${median(rest).toFixed(1)} ms, 95 of 100 ${p95.toFixed(1)} ms, the first ${first.toFixed(1)} ms (at most ${MOST_MS}); ${(bytes / 1000).toFixed(0)} KB${givenUp === 0 ? "" : `; ${givenUp} given up after ${LONGEST / 1000} s`}`,
    );
    computed.set(name, rest);
  }
  await server.stop();
  return computed;
}

const isTooLate = ({ extensions }: { readonly extensions?: { readonly code?: string } }): boolean =>
  extensions?.code === "DEADLINE_EXCEEDED";

const wanted = (process.env["READS"] ?? "").split(",").filter((name) => name !== "");
const isWanted = (name: string): boolean => wanted.length === 0 || wanted.includes(name);

/**
 * Waits until what a server makes ahead is made, and what it looks at again is looked at, but no longer than `LONGEST_WAIT`: says
 * whether it came to rest.
 */
async function untilIdle(): Promise<boolean> {
  const begun = performance.now();
  for (let idle = 0; idle < 3; ) {
    if (performance.now() - begun > LONGEST_WAIT) return false;
    const before = process.cpuUsage();
    await pause(1_000);
    const { user, system } = process.cpuUsage(before);
    idle = user + system < 30_000 ? idle + 1 : 0;
  }
  return true;
}
