import type { Database } from "./database.ts";
import { findMediumProblem } from "./find-medium-problem.ts";

/** Takes the log, which holds a whole restore, into the file. Where somebody is reading, that comes later by itself. */
export function shrinkLog(database: Database): void {
  try {
    database.raw.exec("PRAGMA wal_checkpoint(TRUNCATE)");
  } catch (failure) {
    if (findMediumProblem(failure) === undefined) throw failure;
  }
}
