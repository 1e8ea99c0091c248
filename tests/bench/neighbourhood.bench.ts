import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type LargeGraph, largeGraph } from "#tests/support/large-graph.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { openBareWalk } from "./bare-walk.ts";
import type { Bench } from "./measure.ts";
import { medians } from "./measure.ts";

const PIECES = 100;

/** 20 to 39 features of one family, in one region without narrower ones. */
function someAsks({ features, leafRegions }: LargeGraph, count: number): readonly NeighbourhoodAsk[] {
  const random = randomSource(7);
  return Array.from({ length: count }, () => {
    const family = random.pick(features);
    const seeds = Array.from({ length: 20 + random.below(20) }, () => random.pick(family));
    return { seeds, regions: [random.pick(leafRegions)], maxDepth: 6 };
  });
}

/** A store and bare rows of the same graph, with pieces to ask about. */
async function prepare(claims: number) {
  const graph = largeGraph(claims);
  const store = answered(await openSqliteStore(temporaryPath()));
  answered(await store.commit(aCommit(graph.change)));
  const bare = openBareWalk(temporaryPath(), graph);
  const asks = someAsks(graph, PIECES);
  const [ask] = asks as [NeighbourhoodAsk];
  const found = await store.neighbourhood(ask);
  console.log(
    `  ${claims} claims: a piece of ${ask.seeds.length} features reaches ${found.depths.size} terms, with ${found.claims.length} claims (bare: ${bare.walk(ask).length} rows)`,
  );
  return {
    walk: (piece: number) => store.neighbourhood(asks[piece] as NeighbourhoodAsk),
    bareWalk: (piece: number) => bare.walk(asks[piece] as NeighbourhoodAsk),
    close: async () => {
      await store.close();
      bare.close();
    },
  };
}

/** The read of a neighbourhood against bare SQL, and in a graph ten times as large. */
export const bench: Bench = async () => {
  const small = await prepare(10_000);
  const large = await prepare(100_000);
  const pieces = Array.from({ length: PIECES }, (_, piece) => piece);
  const cost = await medians(
    pieces,
    { rounds: 6, warmUp: 2 },
    { small: small.walk, bareSmall: small.bareWalk, large: large.walk, bareLarge: large.bareWalk },
  );
  await small.close();
  await large.close();
  const [what, against] = ["neighbourhood at", "the bare SQL of the walk on the same claims"];
  return [
    { what: `${what} 10,000 claims`, against, cost: cost.small, costAgainst: cost.bareSmall, atMost: 1.3 },
    { what: `${what} 100,000 claims`, against, cost: cost.large, costAgainst: cost.bareLarge, atMost: 1.3 },
    {
      what: `${what} 100,000 claims`,
      against: "the same kind at 10,000",
      cost: cost.large,
      costAgainst: cost.small,
      atMost: 1.5,
    },
  ];
};
