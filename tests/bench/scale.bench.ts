import { isDeepStrictEqual } from "node:util";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import type { Store } from "#server/ports/store.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, median, type Ratio, timesOf } from "./measure.ts";
import { openMirrored, piecesOf, sizes, wishesOf } from "./scale/bench-graph.ts";
import { openBenchNeo4j, storeOn } from "./scale/bench-neo4j.ts";

const PIECES = 60;
/** More, as what 95 of 100 stay within hangs on a few. */
const REPORTED = 240;
/** Of the whole report at a million claims, and what it may grow by from ten thousand. */
const REPORT = { mostMs: 25, growth: 1.3 } as const;

/** The neighbourhood by every means that keeps it, equal claim for claim, and the whole report, at each size. */
export const bench: Bench = async () => {
  const reports: { readonly claims: number; readonly p95: number }[] = [];
  for (const claims of sizes()) reports.push({ claims, p95: await measureAt(claims) });
  const [small, large] = [reports[0], reports.at(-1)];
  if (small === undefined || large === undefined || small === large) return [];
  return [
    {
      what: `95 of 100 whole reports at ${large.claims} claims, computing`,
      against: `the same at ${small.claims}`,
      ...{ cost: large.p95, costAgainst: small.p95, atMost: REPORT.growth },
    },
  ] satisfies readonly Ratio[];
};

async function measureAt(claims: number): Promise<number> {
  const wishes = wishesOf(claims);
  const pieces = piecesOf(wishes, PIECES);
  const { store: sqlite, mirrored, close } = await openMirrored(wishes);
  const server = await openBenchNeo4j(wishes, "store");
  const neo4j = server && (await storeOn(server, sqlite));
  const stores: Readonly<Record<string, Store>> = {
    "the mirror": mirrored,
    SQLite: sqlite,
    ...(neo4j ? { Neo4j: neo4j } : {}),
  };
  try {
    const asks = pieces.map((piece) => askFor(piece, ASSUMED));
    await compare(stores, asks, claims);
    const times = await timesOf<NeighbourhoodAsk, string>(
      asks,
      { rounds: 4, warmUp: 2 },
      Object.fromEntries(
        Object.entries(stores).map(([name, store]) => [name, (ask) => store.neighbourhood(ask)]),
      ),
    );
    for (const [name, each] of Object.entries(times))
      console.log(
        `    ${name}: median ${median(each).toFixed(2)} ms, 95 of 100 within ${quantile(each, 0.95).toFixed(2)} ms`,
      );
    return await measureReports(mirrored, piecesOf(wishes, REPORTED), claims);
  } finally {
    await neo4j?.close();
    await server?.stop();
    await close();
  }
}

/** Throws unless all stores give the same neighbourhoods. */
async function compare(
  stores: Readonly<Record<string, Store>>,
  asks: readonly NeighbourhoodAsk[],
  claims: number,
): Promise<void> {
  const sizesOf: { readonly terms: number; readonly claims: number }[] = [];
  for (const [n, ask] of asks.entries()) {
    const [first, ...others] = await Promise.all(
      Object.values(stores).map((store) => store.neighbourhood(ask)),
    );
    if (first === undefined) continue;
    sizesOf.push({ terms: first.depths.size, claims: first.claims.length });
    for (const [i, other] of others.entries())
      if (!isDeepStrictEqual({ ...other, revision: 0 }, { ...first, revision: 0 }))
        throw new Error(`${Object.keys(stores)[i + 1]} gives another neighbourhood of piece ${n + 1}`);
  }
  console.log(
    `  ${claims} claims: a piece reaches ${median(sizesOf.map(({ terms }) => terms))} terms and ${median(sizesOf.map((size) => size.claims))} claims (medians), the same by ${Object.keys(stores).join(", ")}`,
  );
}

/** Reports from the read of the neighbourhood to the words; gives what 95 of 100 stay within, of computing in milliseconds. */
async function measureReports(store: Store, pieces: readonly Piece[], claims: number): Promise<number> {
  const report = async (piece: Piece): Promise<void> => {
    const examined = await examinePiece({ store }, piece);
    if (isRefusal(examined)) throw new Error(examined.refused.map(({ message }) => message).join(" "));
  };
  for (let round = 0; round < 2; round++) for (const piece of pieces) await report(piece);
  const wall: number[] = [];
  const computing: number[] = [];
  for (let round = 0; round < 2; round++)
    for (const piece of pieces) {
      const [start, before] = [performance.now(), process.threadCpuUsage()];
      await report(piece);
      const { user, system } = process.threadCpuUsage(before);
      wall.push(performance.now() - start);
      computing.push((user + system) / 1000);
    }
  const what = `the whole report at ${claims} claims`;
  sayFigure({ what: `${what}, computing, median`, value: median(computing), unit: "ms" });
  const p95 = quantile(computing, 0.95);
  sayFigure({ what: `${what}, computing, 95 of 100`, value: p95, unit: "ms", atMost: REPORT.mostMs });
  sayFigure({ what: `${what}, by the clock, 95 of 100`, value: quantile(wall, 0.95), unit: "ms" });
  return p95;
}
