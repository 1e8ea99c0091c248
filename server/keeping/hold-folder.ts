import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { type Problem, problem } from "../domain/problem.ts";
import { findDiskProblem } from "./find-disk-problem.ts";

/** SQLite's codes for a file that another program holds (sqlite.org, "Result and Error Codes"). */
const HELD = [5, 6];
/** For a disk that takes no more: it cannot write, or is full. */
const FULL = [10, 13];

/**
 * Makes sure that one program at a time is at work in a folder of backups: an exclusive lock on a file in it, which the
 * operating system lets go of if the program dies. Gives what lets go of it.
 */
export function holdFolder(folder: string): (() => void) | Problem {
  let lock: DatabaseSync | undefined;
  try {
    const held = new DatabaseSync(join(folder, "backups.lock"), { timeout: 0 });
    lock = held;
    held.exec("BEGIN EXCLUSIVE");
    return () => held.close();
  } catch (failure) {
    lock?.close();
    const { errcode, message } = failure as { readonly errcode?: number; readonly message?: unknown };
    if (errcode === undefined) {
      const refusal = findDiskProblem(failure, folder);
      if (refusal === undefined) throw failure;
      return refusal;
    }
    if (HELD.includes(errcode & 0xff))
      return problem(
        "STORE_LOCKED",
        `Another backup into ${folder} is under way; wait for its end, or name another folder.`,
      );
    if (FULL.includes(errcode & 0xff))
      return problem(
        "STORE_FULL",
        `The disk of ${folder} is full or a limit was reached (${String(message)}); no backup was made, and the earlier ones stay. Make room.`,
      );
    return problem(
      "UNREADABLE_FILE",
      `The folder ${folder} cannot be used for backups (${String(message)}); check its permissions, or name another.`,
    );
  }
}
