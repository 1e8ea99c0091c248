/** Number of a state of the whole graph: 0 is the empty graph. */
export type RevisionNumber = number;

/** Stands for the hash before the first revision. */
export const NO_HASH = "0".repeat(64);

/** One accepted change of the graph, chained to the one before by its hash. */
export interface Revision {
  readonly number: RevisionNumber;
  /** ISO 8601 time in UTC. */
  readonly at: string;
  readonly by: string;
  readonly message: string;
  /** SHA-256, hex, of the canonical JSON of the change. */
  readonly content: string;
  /** Hash of the revision before; 64 zeros for the first. */
  readonly previous: string;
  /** SHA-256, hex, of the canonical JSON of all the fields above. */
  readonly hash: string;
}
