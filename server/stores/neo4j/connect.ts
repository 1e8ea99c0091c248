import neo4j from "neo4j-driver";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { inTime, TOO_LATE } from "../../ports/in-time.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { type Database, type Limits, noAnswer, wrapDriver } from "./database.ts";
import { findServerProblem } from "./find-server-problem.ts";
import type { Neo4jAddress } from "./neo4j-address.ts";
import { prepareDatabase } from "./prepare-database.ts";

export interface ConnectOptions extends Limits {
  /** Nothing is made or written. */
  readonly readOnly: boolean;
}

/** How long a server may take to say whether it lets this user in, in milliseconds. */
const LONGEST_GREETING = 30_000;

/** Connects to a server and prepares its database; what keeps it from that is a problem. */
export async function connect(
  address: Neo4jAddress,
  { readOnly, ...limits }: ConnectOptions,
): Promise<Database | Problem> {
  const driver = neo4j.driver(address.url, neo4j.auth.basic(address.user, address.password), {
    maxConnectionPoolSize: 50,
    connectionAcquisitionTimeout: 5_000,
    connectionTimeout: 3_000,
    maxTransactionRetryTime: limits.patience,
    connectionLivenessCheckTimeout: 30_000,
    telemetryDisabled: true,
    disableLosslessIntegers: true,
    userAgent: "scribeline",
  });
  const database = wrapDriver(driver, address, limits);
  try {
    const known = await inTime(driver.verifyAuthentication({ database: address.database }), LONGEST_GREETING);
    const refusal = known === TOO_LATE ? noAnswer() : await prepareDatabase(database, { readOnly });
    if (refusal === undefined) return database;
    await database.close();
    return refusal;
  } catch (failure) {
    await database.close();
    if (failure instanceof StoreFailed) return failure.problem;
    const refusal = findServerProblem(failure);
    if (!isProblem(refusal)) throw failure;
    return refusal;
  }
}
