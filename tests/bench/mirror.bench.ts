import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { ASSUMED, BUDGET } from "#server/domain/assumptions.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { nextTurn } from "#server/ports/next-turn.ts";
import type { Store } from "#server/ports/store.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { boundOfClaim } from "#server/reasoning/bound-of-claim.ts";
import { buildArrays } from "#server/stores/mirror/build-arrays.ts";
import { neighbourhoodReader } from "#server/stores/mirror/read-neighbourhood.ts";
import { numberedAsk, walker } from "#server/stores/mirror/walk.ts";
import { byteLengthOf, type WalkArrays } from "#server/stores/mirror/walk-arrays.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, median, type Ratio, timesOf } from "./measure.ts";
import { bareAskOf, openBareArrayWalk } from "./scale/bare-array-walk.ts";
import { dataFolderOf, piecesOf, sizes, wishesOf } from "./scale/bench-graph.ts";
import { numberOf } from "./scale/dating-question.ts";

const PIECES = 100;
const BUILDS = 5;
/** What a mirror of a million claims may take; of other sizes it is told. */
const A_MILLION = { megabytes: 120, seconds: 1 } as const;

setFlagsFromString("--expose-gc");
const collectGarbage = runInNewContext("gc") as () => void;

/** The mirror: its building, its size, its walk against the barest one, and its neighbourhoods against the store's. */
export const bench: Bench = async () => {
  const ratios: Ratio[] = [];
  for (const claims of sizes()) ratios.push(...(await measureAt(claims)));
  return ratios;
};

async function measureAt(claims: number): Promise<readonly Ratio[]> {
  const wishes = wishesOf(claims);
  const asks = piecesOf(wishes, PIECES).map((piece) => askFor(piece, ASSUMED));
  const store = answered(
    await openSqliteStore(join(await dataFolderOf(wishes), "scribeline.sqlite"), { readOnly: true }),
  );
  try {
    const arrays = await measureBuilding(store, claims);
    const oneRegion = asks.filter(({ regions }) => regions.length === 1);
    return [
      ...(await measureWalks(arrays, oneRegion, openBareArrayWalk(wishes), claims)),
      ...(await measureNeighbourhoods(arrays, store, asks, claims)),
    ];
  } finally {
    await store.close();
  }
}

/** Builds the arrays some times; the last are kept. */
async function measureBuilding(store: Store, claims: number): Promise<WalkArrays> {
  const at = (await store.newestRevision())?.number ?? 0;
  const limits = claims === 1_000_000 ? A_MILLION : undefined;
  const [clock, computing]: [number[], number[]] = [[], []];
  let arrays = await buildArrays(store.walkBlocks(at), at);
  for (let n = 0; n < BUILDS; n++) {
    const [start, before] = [performance.now(), process.threadCpuUsage()];
    arrays = await buildArrays(store.walkBlocks(at), at);
    const { user, system } = process.threadCpuUsage(before);
    clock.push((performance.now() - start) / 1000);
    computing.push((user + system) / 1_000_000);
  }
  const built = `building the mirror of ${claims} claims from SQLite`;
  sayFigure({ what: `${built}, by the clock, median`, value: median(clock), unit: "s" });
  sayFigure({
    ...{ what: `${built}, computing, median`, value: median(computing), unit: "s" },
    ...(limits ? { atMost: limits.seconds } : {}),
  });
  const heap = await heapOfBuilding(store, at);
  const ways = await memoryOfWays(store, arrays);
  const megabytes = (byteLengthOf(arrays) + heap + ways) / 1e6;
  const [heapGrew, ofWays] = [heap, ways].map((bytes) => `${(bytes / 1e6).toFixed(1)} MB`);
  sayFigure({
    what: `the mirror of ${claims} claims: its arrays, ${heapGrew} by which the heap grew, and ${ofWays} of rows of ways to dates, at most`,
    ...{ value: megabytes, unit: "MB", ...(limits ? { atMost: limits.megabytes } : {}) },
  });
  return arrays;
}

/** By how many bytes the heap is larger with one more mirror and its reader, before anything was read. */
async function heapOfBuilding(store: Store, at: number): Promise<number> {
  collectGarbage();
  const before = process.memoryUsage().heapUsed;
  const arrays = await buildArrays(store.walkBlocks(at), at);
  const reader = neighbourhoodReader(arrays, store, { claims: 200_000, terms: 200_000 });
  collectGarbage();
  const after = process.memoryUsage().heapUsed;
  await reader.read({ seeds: [], regions: [], maxDepth: 0 });
  return Math.max(0, after - before);
}

/** Features that are asked for at once, and after how many such asks it is looked what is held. */
const [FEATURES_AT_ONCE, ASKS_A_LOOK] = [200, 10];

/** How many bytes the rows of ways to dates came to at most while all features were asked for in turn; no bodies are kept. */
async function memoryOfWays(store: Store, arrays: WalkArrays): Promise<number> {
  // Buffers are given back beside the collection, and counted when the next one finds them gone.
  const held = async (): Promise<number> => {
    collectGarbage();
    await nextTurn();
    collectGarbage();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const features: TermId[] = [];
  for await (const slice of store.allTerms({ kinds: ["feature"] }, arrays.revision))
    features.push(...slice.map(({ id }) => id));
  const reader = neighbourhoodReader(arrays, store, { claims: 0, terms: 0 }, boundOfClaim);
  const before = await held();
  let most = 0;
  for (let asks = 0; asks * FEATURES_AT_ONCE < features.length; asks++) {
    await reader.datings({
      features: features.slice(asks * FEATURES_AT_ONCE, (asks + 1) * FEATURES_AT_ONCE),
      ...{ claimed: [1700, 1800], maxDepth: ASSUMED.maxDepth, steps: BUDGET.datings },
    });
    if (asks % ASKS_A_LOOK === 0) most = Math.max(most, (await held()) - before);
  }
  return Math.max(most, (await held()) - before);
}

async function measureWalks(
  arrays: WalkArrays,
  asks: readonly NeighbourhoodAsk[],
  bareWalk: ReturnType<typeof openBareArrayWalk>,
  claims: number,
): Promise<readonly Ratio[]> {
  const walk = walker(arrays);
  const pairs = asks.map((ask) => ({ ask, numbered: numberedAsk(arrays, ask), bare: bareAskOf(ask) }));
  for (const { numbered, bare } of pairs) checkSame(arrays, walk(numbered), bareWalk(bare));
  const times = await timesOf<(typeof pairs)[number], "walk" | "bare" | "numbered">(
    pairs,
    { rounds: 60, warmUp: 20 },
    {
      walk: ({ numbered }) => walk(numbered),
      bare: ({ bare }) => bareWalk(bare),
      numbered: ({ ask }) => numberedAsk(arrays, ask),
    },
  );
  const micro = (each: readonly number[]) =>
    `${(median(each) * 1000).toFixed(1)} µs, 95 of 100 within ${(quantile(each, 0.95) * 1000).toFixed(1)} µs`;
  console.log(
    `  ${claims} claims: mirror ${micro(times.walk)}, its ids looked up in ${micro(times.numbered)}; bare arrays ${micro(times.bare)} (medians)`,
  );
  return [
    {
      what: `the walk of the mirror at ${claims} claims`,
      against: "a bare walk over arrays of the same claims",
      ...{ cost: median(times.walk), costAgainst: median(times.bare), atMost: 2 },
    },
  ];
}

/** Throws unless both reach as many terms, and the bare walk found no claim that the other did not. */
function checkSame(
  arrays: WalkArrays,
  walked: ReturnType<ReturnType<typeof walker>>,
  bare: ReturnType<ReturnType<typeof openBareArrayWalk>>,
): void {
  const found = new Set(
    Array.from(walked.claims.subarray(0, walked.claimCount), (claim) => numberOf(arrays.claims.idOf(claim))),
  );
  if (walked.reachedCount !== bare.reached || bare.claims.some((claim) => !found.has(claim)))
    throw new Error("The bare walk finds something else");
}

async function measureNeighbourhoods(
  arrays: WalkArrays,
  store: Store,
  asks: readonly NeighbourhoodAsk[],
  claims: number,
): Promise<readonly Ratio[]> {
  const fresh = neighbourhoodReader(arrays, store, { claims: 0, terms: 0 });
  const kept = neighbourhoodReader(arrays, store, { claims: 200_000, terms: 200_000 });
  const sizesOf: number[] = [];
  for (const ask of asks) {
    const found = await kept.read(ask);
    if (!isDeepStrictEqual(found, await store.neighbourhood(ask)))
      throw new Error("The mirror gives another neighbourhood");
    sizesOf.push(found?.claims.length ?? 0);
  }
  const times = await timesOf<NeighbourhoodAsk, "kept" | "fresh" | "store">(
    asks,
    { rounds: 4, warmUp: 2 },
    {
      kept: (ask) => kept.read(ask),
      fresh: (ask) => fresh.read(ask),
      store: (ask) => store.neighbourhood(ask),
    },
  );
  const ms = (each: readonly number[]) =>
    `${median(each).toFixed(2)} ms, 95 of 100 within ${quantile(each, 0.95).toFixed(2)} ms`;
  console.log(`  ${claims} claims, neighbourhoods of ${median(sizesOf)} claims, equal (medians):`);
  console.log(`    mirror with bodies kept ${ms(times.kept)}; bodies read anew ${ms(times.fresh)}`);
  console.log(`    SQLite, bodies kept ${ms(times.store)}`);
  return [
    {
      what: `neighbourhood by the mirror at ${claims} claims`,
      against: "the same by SQLite",
      ...{ cost: median(times.kept), costAgainst: median(times.store), atMost: 0.5 },
    },
  ];
}
