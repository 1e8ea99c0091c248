import { DatabaseSync } from "node:sqlite";
import { isBusy } from "./find-medium-problem.ts";

/** What programs that write to one file agree by: an empty database beside it, and the locks of the operating system on it. */
export interface Gate {
  /**
   * Goes in together with others of this version, or alone; false where somebody is in who does not allow that. What was held
   * before is let go of first.
   */
  enter(how: "together" | "alone"): boolean;
  /** Lets go. The operating system does it for a program that dies. */
  close(): void;
}

/**
 * Opens the gate of a file. Who serves a file is in it together with others; who brings it up to this version is in it alone,
 * and so is, for as long as it serves, a program of a version that wanted to be the only one.
 */
export function openGate(path: string): Gate {
  const gate = new DatabaseSync(`${path}-writer`, { timeout: 0 });
  return {
    enter: (how) => {
      try {
        if (gate.isTransaction) gate.exec("ROLLBACK");
        gate.exec(how === "alone" ? "BEGIN EXCLUSIVE" : "BEGIN; SELECT count(*) FROM sqlite_schema");
        return true;
      } catch (failure) {
        if (!isBusy(failure)) throw failure;
        return false;
      }
    },
    close: () => {
      if (gate.isOpen) gate.close();
    },
  };
}
