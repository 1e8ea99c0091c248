import type { Problem } from "../domain/problem.ts";

/** What a process says of a thing for a short while. */
export interface Note {
  readonly about: string;
  /** The process, by a name that no other has. */
  readonly by: string;
  /** Plain JSON. */
  readonly body: unknown;
}
/** What is said of a thing in place of what the same process said of it before; without a body nothing any more. */
export interface NoteWrite {
  readonly about: string;
  readonly body?: unknown;
}

/** Milliseconds that a note holds at most. */
export const LONGEST_NOTE = 60_000;

/**
 * What processes over one store tell each other for a short while (S71). It stands beside everything else: in no ledger, chain or dump, not
 * verified, and may be lost at any time. Whether a note still holds goes by the clock of the store.
 */
export interface Notes {
  /**
   * Says something of some things, all or none, for `life` milliseconds (1 to `LONGEST_NOTE`; else a RangeError), and takes away what
   * holds no more, whoever said it.
   */
  leaveNotes(by: string, notes: readonly NoteWrite[], life: number): Promise<"left" | Problem>;
  /** What is said of these things, by thing and process. */
  notesAbout(about: readonly string[]): Promise<readonly Note[]>;
}

/** The life of a note, if it can have it. */
export function checkLife(life: number): number {
  if (Number.isInteger(life) && life >= 1 && life <= LONGEST_NOTE) return life;
  throw new RangeError(`A note holds for 1 to ${LONGEST_NOTE} ms, not for ${life}`);
}
