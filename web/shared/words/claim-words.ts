import { READING_IN_WORDS } from "#server/domain/reading-in-words.ts";
import type { Basis, ClaimStatus, Hardness, PartState, Strength } from "../apollo/schema-types.graphql.ts";

/** Where a claim comes from; stands wherever the claim does. */
export const basisWords: Readonly<Record<Basis, string>> = {
  PUBLISHED: "published",
  COMMON_PRACTICE: "common practice",
  FROM_MEMORY: "from memory, unconfirmed",
};

/** How far a claim can be leaned on. */
export const strengthWords: Readonly<Record<Strength, string>> = {
  CERTAIN: "certain",
  FIRM: "firm",
  USUAL: "usual",
  TENTATIVE: "tentative",
};

/** Whether a claim says what could be, or what was done. */
export const hardnessWords: Readonly<Record<Hardness, string>> = {
  PHYSICAL: "physical",
  PRACTICE: "practice",
};

/** Both in a few words: "firm, physical". */
export const sayStrength = ({
  strength,
  hardness,
}: {
  readonly strength: Strength;
  readonly hardness: Hardness | null;
}): string => [strengthWords[strength], ...(hardness ? [hardnessWords[hardness]] : [])].join(", ");

export const statusWords: Readonly<Record<ClaimStatus, string>> = {
  ACCEPTED: "accepted",
  PROPOSED: "proposed, not yet accepted: counts for nothing",
  REJECTED: "rejected: kept for its reason, counts for nothing",
};

export const stateWords: Readonly<Record<PartState, string>> = {
  ORIGINAL: "original",
  LATER: "later than the piece",
  REUSED: "reused from an earlier piece",
  REWORKED: "of the first making, worked over since",
};

/** How far a source was read when its claims were taken from it. */
export const readingWords: Readonly<Record<string, string>> = READING_IN_WORDS;
