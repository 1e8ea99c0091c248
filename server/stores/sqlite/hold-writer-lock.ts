import { DatabaseSync } from "node:sqlite";
import { type Problem, problem } from "../../domain/problem.ts";
import { findMediumProblem } from "./find-medium-problem.ts";

export interface WriterLock {
  readonly release: () => void;
}

/**
 * Makes sure that one program at a time writes to a store: an exclusive lock on a file beside it, held until `release`
 * and let go by the operating system if the program dies. Programs that only read do not ask for it.
 */
export function holdWriterLock(path: string): WriterLock | Problem {
  let lock: DatabaseSync | undefined;
  try {
    lock = new DatabaseSync(`${path}-writer`, { timeout: 0 });
    lock.exec("BEGIN EXCLUSIVE");
    const held = lock;
    return { release: () => held.close() };
  } catch (failure) {
    lock?.close();
    const refusal = findMediumProblem(failure);
    if (refusal === undefined) throw failure;
    if (refusal.code !== "STORE_LOCKED") return refusal;
    return problem(
      "STORE_LOCKED",
      `Another Scribeline already writes to ${path}; use that one, stop it, or choose another data folder (SCRIBELINE_DATA).`,
    );
  }
}
