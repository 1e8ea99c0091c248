import type { TermId } from "./ids.ts";

/** The most that is usually moved to see a feature, least first; the last two are for those who are licensed to. */
export const MOVES = [
  "nothing",
  "drawer out",
  "piece turned",
  "something unfastened",
  "sample taken",
] as const;
export type Move = (typeof MOVES)[number];

/** What is held in the hand for it, beside eyes and daylight. */
export const AIDS = [
  "raking light",
  "mirror",
  "lens",
  "fingertip",
  "rule",
  "square",
  "magnet",
  "ultraviolet lamp",
  "laboratory",
] as const;
export type Aid = (typeof AIDS)[number];

/** Something that looks like the feature and is not. */
export interface LookAlike {
  /** In plain words: "scratches of a steel scraper". */
  readonly what: string;
  /** The same as a term of the graph, where there is one. */
  readonly term?: TermId;
  /** How the two are told apart; sentences. */
  readonly apart: string;
}

/** How a feature is looked for on a piece, what it is mistaken for, and what brings it about in all honesty. */
export interface Looking {
  /** Where to stand, what to move and how light falls; sentences. */
  readonly how: string;
  readonly move: Move;
  readonly aids?: readonly Aid[];
  readonly mistakenFor?: readonly LookAlike[];
  /** What leaves the feature, or takes it away, without any intent to deceive; sentences. */
  readonly innocent?: string;
  /** Like that of a citation; what a source says on it stands in claims. */
  readonly basis: "common practice" | "from memory";
}
