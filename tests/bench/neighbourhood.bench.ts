import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type LayeredGraph, layeredGraph } from "#tests/support/layered-graph.ts";
import { randomSource } from "#tests/support/random-source.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { openBareWalk } from "./bare-walk.ts";
import type { Bench } from "./measure.ts";
import { medians } from "./measure.ts";

/** 20 to 39 features of one family, in one region without narrower ones. */
function someAsks({ features, leafRegions }: LayeredGraph, count: number): readonly NeighbourhoodAsk[] {
  const random = randomSource(7);
  return Array.from({ length: count }, () => {
    const family = random.pick(features);
    const seeds = Array.from({ length: 20 + random.below(20) }, () => random.pick(family));
    return { seeds, regions: [random.pick(leafRegions)], maxDepth: 6 };
  });
}

async function measure(claims: number) {
  const graph = layeredGraph(claims);
  const store = answered(await openSqliteStore(temporaryPath()));
  answered(await store.commit(aCommit(graph.change)));
  const bare = openBareWalk(temporaryPath(), graph);
  const asks = someAsks(graph, 100);
  const [ask] = asks as [NeighbourhoodAsk];
  const found = await store.neighbourhood(ask);
  console.log(
    `  ${claims} claims: a piece of ${ask.seeds.length} features reaches ${found.depths.size} terms, with ${found.claims.length} claims (bare: ${bare.walk(ask).length} rows)`,
  );
  const times = await medians(
    asks,
    { rounds: 5, warmUp: 2 },
    {
      store: (asked) => store.neighbourhood(asked),
      bare: (asked) => bare.walk(asked),
    },
  );
  await store.close();
  bare.close();
  return times;
}

/** The read of a neighbourhood against bare SQL, and in a graph ten times as large. */
export const bench: Bench = async () => {
  const small = await measure(10_000);
  const large = await measure(100_000);
  const against = "the bare SQL of the walk on the same claims";
  return [
    {
      what: "neighbourhood at 10,000 claims",
      against,
      cost: small.store,
      costAgainst: small.bare,
      atMost: 1.3,
    },
    {
      what: "neighbourhood at 100,000 claims",
      against,
      cost: large.store,
      costAgainst: large.bare,
      atMost: 1.3,
    },
    {
      what: "neighbourhood at 100,000 claims",
      against: "the same kind at 10,000",
      cost: large.store,
      costAgainst: small.store,
      atMost: 1.5,
    },
  ];
};
