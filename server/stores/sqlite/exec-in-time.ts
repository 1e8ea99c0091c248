import type { DatabaseSync } from "node:sqlite";
import { isBusy } from "./find-medium-problem.ts";
import { tryInTime } from "./try-in-time.ts";

/** Runs a statement, and again while another program is in the way; throws what SQLite says if that takes too long. */
export async function execInTime(raw: DatabaseSync, sql: string, patience: number): Promise<void> {
  let busy: unknown;
  const done = await tryInTime(patience, () => {
    try {
      raw.exec(sql);
      return "done";
    } catch (failure) {
      if (!isBusy(failure)) throw failure;
      busy = failure;
      return undefined;
    }
  });
  if (done === undefined) throw busy;
}
