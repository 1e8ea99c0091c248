/**
 * Who did something, when and what, as the ledger keeps it for ever: a person stands in it by an id that says nothing, so that a
 * name can be taken away later without a trace in it.
 */
export interface Deed {
  /** Id of a person, or of what acts by itself (`local`, `seed`, `program`). */
  readonly by: string;
  /** ISO 8601 time in UTC. */
  readonly at: string;
  /** A verb and what it is done to, e.g. `accept proposal`. */
  readonly did: string;
  /** Id of what it was done to. */
  readonly about?: string;
}
