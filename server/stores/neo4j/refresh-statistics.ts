import { StoreFailed } from "../../ports/store-failed.ts";
import type { Database } from "./database.ts";
import { findServerProblem } from "./find-server-problem.ts";

/** Rows of large writes of a program: all of them, and those since statistics were refreshed. */
const written = new WeakMap<Database, { all: number; since: number }>();
/** From so many rows on, plans made before are not worth keeping. */
const CHANGES_PLANS = 1_000;

/**
 * After a large write: makes the server plan anew where what this program wrote has grown by half since it last did. Each
 * time would cost more than the writes themselves, as indexes are read through for it.
 */
export async function refreshAfter(database: Database, rows: number): Promise<void> {
  if (rows < CHANGES_PLANS) return;
  const count = written.get(database) ?? { all: 0, since: 0 };
  written.set(database, count);
  count.all += rows;
  count.since += rows;
  if (count.since * 3 < count.all) return;
  count.since = 0;
  await refreshStatistics(database);
}

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
