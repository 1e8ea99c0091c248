import type { Relation, Status, Strength } from "../domain/claim.ts";
import type { PartState } from "../domain/part-state.ts";
import type { Reading, SourceKind } from "../domain/source.ts";
import type { TermKind } from "../domain/term.ts";
import type { Quantiles, Weights } from "./weighted.ts";

/**
 * How the seed graph is made up: counts in `seed-data`. A test counts again and compares. What the seed has not, and a
 * graph of many hands will have, is marked as added.
 */
export const SEED = { terms: 1954, claims: 2453, sources: 668, regions: 169, parts: 70 } as const;

/** Kinds of term beside regions and kinds of part. */
export const KINDS = {
  ...{ feature: 963, material: 222, tool: 162, practice: 115, form: 92 },
  ...{ maker: 55, hardware: 48, style: 44, finish: 14 },
} as const satisfies Weights<TermKind>;
export type Kind = keyof typeof KINDS;

/** Of 100 terms of a kind, those with a broader one. */
export const BROADER: Readonly<Partial<Record<TermKind, number>>> = {
  ...{ feature: 29, material: 55, tool: 69, form: 95, hardware: 71, practice: 22, style: 11, finish: 7 },
  part: 50,
};
/** Of 100 terms of a kind, those with another label. */
export const OTHER_LABELS: Readonly<Partial<Record<TermKind, number>>> = {
  ...{ feature: 17, material: 14, tool: 9, form: 58, hardware: 10, practice: 2, region: 31, part: 54 },
};

/** `spread to`: added. */
export const RELATIONS = {
  ...{ "void when": 425, requires: 421, attested: 387, "typical of": 374, introduced: 235, current: 183 },
  ...{ "common from": 179, indicates: 109, active: 54, "common until": 53, "not found in": 17 },
  ...{ "confined to": 9, discontinued: 7, "spread to": 9 },
} as const satisfies Weights<Relation>;

/** What claims of a relation are about. */
export const SUBJECTS: Readonly<Record<Exclude<Relation, "void when">, Weights<Kind>>> = {
  requires: { feature: 308, material: 38, tool: 34, practice: 21, hardware: 14, finish: 6 },
  introduced: { tool: 72, material: 67, practice: 48, hardware: 20, feature: 18, form: 9 },
  attested: {
    ...{ feature: 116, tool: 100, material: 66, practice: 45, form: 29, hardware: 18, finish: 9, maker: 3 },
  },
  "common from": {
    ...{ feature: 85, material: 33, hardware: 18, form: 17, tool: 10, practice: 8, finish: 6, style: 2 },
  },
  current: { feature: 100, style: 58, form: 17, finish: 3, practice: 3, tool: 2 },
  "typical of": { feature: 350, form: 16, practice: 4, material: 3 },
  "common until": { feature: 29, material: 8, practice: 7, hardware: 4, form: 3, tool: 1 },
  "confined to": { feature: 8, form: 1 },
  indicates: { feature: 109 },
  active: { maker: 54 },
  "not found in": { feature: 11, form: 3, practice: 2 },
  discontinued: { practice: 4, material: 2, hardware: 1 },
  "spread to": { feature: 6, tool: 3 },
};

/** What a term of a kind is made with. */
export const MEANS: Readonly<Partial<Record<Kind, Weights<Kind>>>> = {
  feature: { material: 138, tool: 99, practice: 81, hardware: 35, finish: 14, feature: 1 },
  material: { material: 47, tool: 20, practice: 5 },
  practice: { material: 10, practice: 10, tool: 9, finish: 1 },
  hardware: { material: 14, practice: 4, hardware: 3, tool: 2 },
  tool: { tool: 26, material: 8, practice: 7 },
  finish: { material: 8, finish: 2, practice: 1 },
};
export const WAYS: Weights<"1" | "2" | "3" | "5"> = { 1: 362, 2: 48, 3: 10, 5: 1 };
export const TERMS_A_WAY: Weights<"1" | "2" | "3" | "4"> = { 1: 448, 2: 40, 3: 3, 4: 2 };
/** Of 100 lists of ways, the closed ones. */
export const CLOSED = 61;

/** Dimensions that a scope names. */
export const SCOPES: Weights<"region" | "none" | "form" | "part" | "region form" | "region part"> = {
  ...{ region: 1117, none: 694, form: 102, "region form": 53, part: 49, "region part": 12 },
};
/** Steps from the root to the region of a scope. */
export const SCOPE_DEPTHS: Weights<"1" | "2" | "3" | "4" | "5" | "6" | "7"> = {
  ...{ 1: 15, 2: 810, 3: 120, 4: 114, 5: 91, 6: 29, 7: 3 },
};

export const STRENGTHS: Weights<Strength> = { usual: 1447, firm: 611, tentative: 236, certain: 159 };
/** `proposed`: added. */
export const STATUSES: Weights<Status> = { accepted: 2433, rejected: 20, proposed: 10 };
/** Of 100 claims `introduced`, and of 100 `discontinued`, those of habit. */
export const OF_HABIT = { introduced: 11, discontinued: 43 } as const;

/** What exceptions are of. Exceptions of exceptions: added. */
export const EXCEPTED: Weights<Relation> = {
  ...{ indicates: 220, current: 113, "common from": 34, requires: 30, introduced: 15, "common until": 8 },
  ...{ "not found in": 4, "confined to": 1, "void when": 17 },
};
/** Of 100 exceptions, those that hold wherever on the piece the condition is seen, and those of an absence only. */
export const ANYWHERE = 38;
export const ABSENCE_ONLY = 3;

/** Part states that a sign speaks for. */
export const STATES: Weights<PartState | `${PartState} ${string}`> = {
  ...{ reworked: 33, later: 26, reused: 10, original: 9, "later reworked": 16 },
  ...{ "reworked reused": 7, "original reused reworked": 5, "later reused": 3 },
};
/** Of 100 signs, those with a cause. */
export const WITH_CAUSE = 83;

/** What things are typical of. */
export const OBJECTS: Weights<Kind | "region"> = {
  ...{ region: 314, style: 20, tool: 10, practice: 8, maker: 6, finish: 6, material: 6 },
  ...{ form: 2, feature: 2 },
};
/** Regions that something is confined to. */
export const CONFINED: Weights<"1" | "2" | "4"> = { 1: 6, 2: 1, 4: 2 };

export const CITATIONS: Weights<"1" | "2" | "3" | "4"> = { 1: 2217, 2: 201, 3: 34, 4: 1 };
export const BASES: Weights<"published" | "common practice" | "from memory"> = {
  ...{ published: 1422, "common practice": 1105, "from memory": 198 },
};
/** Of 100 citations without a source, those with a note. */
export const NOTED = 10;

export const SOURCE_KINDS: Weights<SourceKind> = {
  ...{ "web page": 202, article: 118, "museum text": 95, "trade text": 80, patent: 78, book: 66 },
  ...{ statute: 10, standard: 9, thesis: 6, "documented piece": 4 },
};
export const READINGS: Weights<Reading> = { read: 364, opening: 191, secondary: 102, known: 11 };

/** Kinds of part that a feature is looked for on, and that a form has. */
export const PARTS_OF_FEATURE: Quantiles = [1, 1, 1, 2, 3, 4, 5, 6, 10];
export const PARTS_OF_FORM: Quantiles = [4, 6, 8, 11, 19, 21, 24, 27, 27];

/** Lengths of texts in characters. */
export const LENGTHS = {
  label: [3, 9, 16, 28, 41, 52, 56, 67, 83],
  note: [11, 46, 60, 86, 115, 155, 190, 242, 359],
  claimNote: [6, 25, 37, 54, 78, 104, 123, 162, 224],
  citationNote: [19, 37, 51, 67, 72, 81, 87, 101, 139],
  locator: [4, 7, 8, 13, 21, 36, 67, 118, 155],
} as const satisfies Readonly<Record<string, Quantiles>>;
/** Of 100 claims, those with a note. */
export const CLAIM_NOTES = 60;

/** First years of things, and years that a fashion or a use lasts. */
export const YEARS: Quantiles = [1500, 1690, 1745, 1807, 1865, 1921, 1942, 1963, 1990];
export const LASTING: Quantiles = [9, 22, 30, 45, 60, 100, 125, 170, 175];
