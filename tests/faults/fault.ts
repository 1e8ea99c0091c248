import type { RandomSource } from "#server/generator/random-source.ts";
import type { FoundNeo4j } from "#tests/support/neo4j/found-neo4j.ts";
import type { KillableNeo4j } from "#tests/support/neo4j/start-server.ts";
import type { Counts } from "./counts.ts";

/** What a fault needs from outside. */
export interface Means {
  /** A server that many stores share. */
  readonly neo4j: () => Promise<FoundNeo4j>;
  /** One that may be killed. */
  readonly ownNeo4j: () => Promise<KillableNeo4j>;
}

/** One way in which things go wrong, to be done again and again. */
export interface Fault {
  readonly name: string;
  /** What goes wrong, for people. */
  readonly what: string;
  /** How often it is done where it is done in full. */
  readonly times: number;
  /** A round on a new store: at least one fault, at most so many. Everything follows from the random numbers but the timing. */
  readonly round: (random: RandomSource, most: number, means: Means) => Promise<Counts>;
}
