import type { Relation } from "../apollo/schema-types.graphql.ts";

/** A relation as the field says it. */
export const relationWords: Readonly<Record<Relation, string>> = {
  REQUIRES: "requires",
  TYPICAL_OF: "typical of",
  INTRODUCED: "introduced",
  ATTESTED: "attested",
  COMMON_FROM: "common from",
  COMMON_UNTIL: "common until",
  DISCONTINUED: "discontinued",
  CURRENT: "current",
  ACTIVE: "active",
  CONFINED_TO: "confined to",
  NOT_FOUND_IN: "not found in",
  SPREAD_TO: "spread to",
  INDICATES: "indicates",
  VOID_WHEN: "void when",
};

/** What a claim of each relation tells, as a heading over several. */
export const relationHeadings: Readonly<Record<Relation, string>> = {
  REQUIRES: "What it could only be made with",
  TYPICAL_OF: "What it is typical of",
  INTRODUCED: "When it first came",
  ATTESTED: "Where it is recorded",
  COMMON_FROM: "When it became common",
  COMMON_UNTIL: "When it ceased to be common",
  DISCONTINUED: "When it was last made",
  CURRENT: "When it was in use",
  ACTIVE: "When the maker worked",
  CONFINED_TO: "Where alone it was made",
  NOT_FOUND_IN: "Where and when it is not found",
  SPREAD_TO: "How long it took to spread",
  INDICATES: "What it says of a part that shows it",
  VOID_WHEN: "What sets a claim aside",
};

/** The order in which the claims about a term are read: its years first, then how it was made, then its company. */
export const relationOrder: readonly Relation[] = [
  "INTRODUCED",
  "ATTESTED",
  "COMMON_FROM",
  "CURRENT",
  "ACTIVE",
  "COMMON_UNTIL",
  "DISCONTINUED",
  "NOT_FOUND_IN",
  "CONFINED_TO",
  "SPREAD_TO",
  "REQUIRES",
  "INDICATES",
  "TYPICAL_OF",
  "VOID_WHEN",
];
