import { StoreFailed } from "../../ports/store-failed.ts";
import type { Database } from "./database.ts";
import { findServerProblem } from "./find-server-problem.ts";

/**
 * Makes the server plan anew. A plan made while the database was all but empty is kept and can be a hundred times slower
 * than the right one. Where the server will not, what was written stands all the same.
 */
export async function refreshStatistics(database: Database): Promise<void> {
  try {
    await database.administer("CALL db.awaitIndexes(120)");
    await database.administer("CALL db.resampleOutdatedIndexes()");
    await database.administer("CALL db.clearQueryCaches()");
  } catch (failure) {
    if (!(failure instanceof StoreFailed) && findServerProblem(failure) === undefined) throw failure;
  }
}
