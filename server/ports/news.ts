import type { Written } from "../domain/written.ts";

/** What is told to those who follow a house while they work: the ledger, from any place on. */
export interface News {
  /** The number of the last write that is told of. */
  readonly sequence: () => number;
  /** Writes after that number, oldest first, at most `most`; none where there are none yet. Kept in memory as far as they are new. */
  readonly after: (sequence: number, most: number) => Promise<readonly Written[]>;
  /** Resolves when there is a write after that number, or when `stop` fires. */
  readonly beyond: (sequence: number, stop: AbortSignal) => Promise<void>;
}
