import { randomSource } from "#server/generator/random-source.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "./counts.ts";
import type { Fault, Means } from "./fault.ts";

/** Does a fault a few times. `npm run faults` does the same more often. */
export async function strike(
  fault: Fault,
  times: number,
  means: Means = NO_MEANS,
  seed = 1,
): Promise<Counts> {
  let counts = NOTHING_COUNTED;
  for (let round = 0; counts.faults < times; round++)
    counts = addCounts(counts, await fault.round(randomSource(seed + round), times - counts.faults, means));
  return counts;
}

const missing = (): never => {
  throw new Error("This fault was given no Neo4j server");
};
const NO_MEANS: Means = { neo4j: missing, ownNeo4j: missing };
