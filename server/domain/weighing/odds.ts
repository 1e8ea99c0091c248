import type { Strength } from "../claim.ts";
import type { Sureness } from "../examination.ts";
import type { PartId, TermId } from "../ids.ts";
import type { Move } from "../looking.ts";
import type { RivalKind } from "./rivals.ts";

/** How probable each state of a part is; the four add up to 1. */
export interface StateOdds {
  readonly original: number;
  readonly later: number;
  readonly reused: number;
  readonly reworked: number;
}

/** Odds of the three states of a part that was not worked over since; they add up to 1. */
export type PlainStateOdds = Omit<StateOdds, "reworked">;

export const DATE_PRIORS = ["uniform", "as claimed", "production"] as const;
/**
 * What is taken of the year of making before anything is seen: every year alike; half of it within the claimed years; or by the
 * documented pieces of each decade, where there are at least 30.
 */
export type DatePrior = (typeof DATE_PRIORS)[number];

/** Every number that the weighing assumes rather than cites. Probabilities lie strictly between 0 and 1 but where said. */
export interface AssumedOdds {
  /** By kind of part; a kind without odds takes those of the nearest broader kind, else `otherwise`. */
  readonly states: readonly { readonly kind: TermId; readonly odds: PlainStateOdds }[];
  readonly otherwise: PlainStateOdds;
  /** For parts of this piece, in place of those of their kind. */
  readonly ofParts: readonly { readonly part: PartId; readonly odds: PlainStateOdds }[];
  /** Share of each state that goes to `reworked`; 0 leaves the three states as they are. */
  readonly reworked: number;
  /** That a dating feature on a reworked part is of the later work. */
  readonly laterWork: number;
  readonly wrongClaim: Readonly<Record<Strength, number>>;
  /** What a `?` on a date multiplies the probability of being right by. */
  readonly doubtful: number;
  /** That a thing was made earlier somewhere than the graph knows. */
  readonly wrongFallback: number;
  readonly misread: Readonly<Record<Sureness, number>>;
  /** That what is there is found when it is looked for. */
  readonly detect: number;
  /** Share of the parts of its time, where a thing is in full use, that have it. */
  readonly prevalence: number;
  /** That a feature is reported where it was misread. */
  readonly baseRate: number;
  /** Probability outside all known years: a claim that is wrong, a thing before its time. 0 only if asked for. */
  readonly leak: number;
  /** That a habit out of its time was copied on purpose, in a revival say; 0 but in stories of copying. */
  readonly copied: number;
  /** How common a habit stays after it went out. */
  readonly lateSurvival: number;
  /** Mean age, in years, of what is reused. */
  readonly reuseYears: number;
  /** Years after which a part shows every sign of age as surely as ever. */
  readonly ageYears: number;
  /** Probability of a sign if a state that it speaks for holds, and if not. */
  readonly signs: Readonly<Record<Strength, readonly [number, number]>>;
  /** Probability of a feature where it is typical, and elsewhere. */
  readonly typical: Readonly<Record<Strength, number>>;
  readonly notTypical: number;
  /** That a place can be got at, by what has to be moved for it; and what that costs, beside looking at what is open. */
  readonly access: Readonly<Record<Move, number>>;
  readonly effort: Readonly<Record<Move, number>>;
  readonly datePrior: DatePrior;
  /** First year of the grid; the last is that of the examination. */
  readonly gridFrom: number;
  /** Shared claims and sources that are tried both right and wrong. */
  readonly worlds: number;
  /** Priors of the rival stories before anything is seen; "made later to look old" takes its own from all of them. */
  readonly rivals: Readonly<Record<Exclude<RivalKind, "to-look-old">, number>>;
  /** Prior of "made later to look old"; without it the rival is not weighed. */
  readonly madeToDeceive?: number;
}
