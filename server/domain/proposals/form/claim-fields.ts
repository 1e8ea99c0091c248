import { EVENT_RELATIONS, PERIOD_RELATIONS, type Relation } from "../../claim.ts";

const SCOPE = ["region", "form", "part"] as const;
const DATED = ["subject", ...SCOPE, "when", "hardness"] as const;

/** What a claim of each relation says, in the order in which it is asked. */
export const FIELDS_OF_RELATION = {
  ...(Object.fromEntries(
    [...EVENT_RELATIONS, ...PERIOD_RELATIONS].map((relation) => [relation, DATED]),
  ) as Record<(typeof EVENT_RELATIONS)[number] | (typeof PERIOD_RELATIONS)[number], typeof DATED>),
  requires: ["subject", ...SCOPE, "ways", "closed", "hardness"],
  "typical of": ["subject", ...SCOPE, "object"],
  "confined to": ["subject", ...SCOPE, "regions", "hardness"],
  "not found in": ["subject", ...SCOPE, "when", "hardness"],
  "spread to": ["subject", "from", "to", "years"],
  indicates: ["subject", ...SCOPE, "states", "cause"],
  "void when": ["of", "condition", "anywhere", "absence-only"],
} as const satisfies Readonly<Record<Relation, readonly string[]>>;

/** Fields of every claim beside those of its relation. */
export const COMMON_FIELDS = ["relation", "strength", "status", "note", "row"] as const;

/** Fields of a citation; a second one of a claim has them with ".2" behind, and so on. */
export const CITATION_FIELDS = ["basis", "source", "locator", "citation-note"] as const;

/** Citations that a form has room for. */
export const MOST_CITATIONS = 12;

/** A field of one of the citations, counted from 0, or of the source that it describes. */
export const placedField = (name: string, nth: number): string => (nth === 0 ? name : `${name}.${nth + 1}`);

/** A field of one of the citations, counted from 0. */
export const citationField = (name: (typeof CITATION_FIELDS)[number], nth: number): string =>
  placedField(name, nth);

/** Fields that hold names of terms, one or several. */
export const FIELDS_OF_TERMS = [
  ...["subject", "region", "form", "part", "ways", "object", "regions", "from", "to", "condition"],
] as const;

export const isRelation = (text: string | undefined): text is Relation =>
  text !== undefined && Object.hasOwn(FIELDS_OF_RELATION, text);
