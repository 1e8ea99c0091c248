import type { Strength } from "../../domain/claim.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import type { Position } from "../../domain/position.ts";
import type { YearsJson } from "../../domain/years.ts";

/**
 * What seeing a feature would come to, the most telling first: years it cannot be outside of, a state of the part, years
 * that are usual, a place or form that it is typical of, no more than that it is on record.
 */
export const TELLS = ["bound", "sign", "habit", "typical", "record"] as const;
export type Tells = (typeof TELLS)[number];

/** A feature worth looking for on one kind of part, with what it would tell there if it were seen. */
export interface Telling {
  readonly part: TermId;
  readonly feature: TermId;
  readonly position: Position;
  readonly tells: Tells;
  /** Years that physical claims leave, and those that practice claims leave too; all of them where nothing bounds. */
  readonly possible: YearsJson;
  readonly usual: YearsJson;
  /** Only as far as this graph knows the earliest date anywhere. */
  readonly isAssumed: boolean;
  /** The claims it rests on: those of the bound first, then of the habit, the signs, the records, what it is typical of. */
  readonly claims: readonly ClaimId[];
  /** The weakest of them; what it is typical of counts only where nothing else is told. */
  readonly strength: Strength;
  /** One of them is about this form, or one around it. */
  readonly isOfForm: boolean;
  /** It is said to be typical of the very place that is claimed. */
  readonly isOfPlace: boolean;
  /** Of a sign: it speaks of a change, and not only of age. */
  readonly isOfChange: boolean;
  /** It would contradict the claimed date. */
  readonly isAgainstDate: boolean;
  /** How evenly its years divide those in question: the smaller of what they take and what they leave, in years. */
  readonly evenness: number;
  /** now: by eye and hand. later: something is unfastened for it, or nobody has set down how it is looked for. */
  readonly sight: "now" | "later" | "sample";
  /** How many kinds of part it is looked for on. */
  readonly kinds: number;
}
