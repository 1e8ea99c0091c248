import type { Claim } from "../domain/claim.ts";
import type { Datings, DatingsAsk } from "../domain/datings.ts";
import type { Span } from "../domain/years.ts";

/** The first and the last year that a claim leaves; nothing where it bounds none. */
export type BoundOf = (claim: Claim) => Span | undefined;

/** Answers where it can, of the newest revision, what else is read from a neighbourhood. */
export interface DatingReader {
  readonly datings: (ask: DatingsAsk) => Promise<Datings | undefined>;
}
