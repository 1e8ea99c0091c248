import type { Store } from "./store.ts";

/** The functions of a store that write. */
export const WRITES: ReadonlySet<string | symbol> = new Set<keyof Store>([
  "commit",
  "createExamination",
  "changeExamination",
  "undoExamination",
  "deleteExamination",
  "writeCards",
  "leaveNotes",
  "restore",
]);
