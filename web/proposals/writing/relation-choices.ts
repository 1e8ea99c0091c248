import type { Relation } from "#server/domain/claim.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";

interface RelationChoice {
  readonly id: Relation;
  readonly label: string;
  readonly beside: string;
}

/** What can be claimed, as one would say it. */
export const RELATION_CHOICES: readonly RelationChoice[] = [
  { id: "introduced", label: "When it first came", beside: "nothing that shows it can be older" },
  { id: "attested", label: "When it is on record", beside: "dated, billed, described in some year" },
  { id: "common from", label: "When it became common", beside: "found before, but seldom" },
  { id: "common until", label: "When it ceased to be common", beside: "found after, but seldom" },
  { id: "discontinued", label: "When it was last made", beside: "nothing that shows it should be younger" },
  { id: "current", label: "From when to when it was in use", beside: "a style, a practice, a wood" },
  { id: "active", label: "From when to when a workshop worked", beside: "" },
  { id: "requires", label: "What it is made with", beside: "a mark needs its tool, a joint its wood" },
  { id: "typical of", label: "What it is usual for", beside: "company that it keeps; bounds nothing" },
  { id: "confined to", label: "Where alone it was made", beside: "" },
  { id: "not found in", label: "Where or when it is not found", beside: "" },
  { id: "spread to", label: "How long it took to spread", beside: "from one region to another" },
  { id: "indicates", label: "What it says of a part that shows it", beside: "a later part, a reused one" },
];

const THINGS: readonly TermKind[] = [
  ...(["FEATURE", "PRACTICE", "TOOL", "HARDWARE", "MATERIAL", "FINISH", "STYLE", "FORM", "MAKER"] as const),
];
export const OBSERVED: readonly TermKind[] = [
  "FEATURE",
  "PRACTICE",
  "TOOL",
  "HARDWARE",
  "MATERIAL",
  "FINISH",
];

/** Kinds of term that can stand in a field. */
export const KINDS_OF_FIELD: Readonly<Record<string, readonly TermKind[]>> = {
  subject: THINGS,
  ways: THINGS,
  object: [...THINGS, "REGION"],
  condition: OBSERVED,
  region: ["REGION"],
  regions: ["REGION"],
  from: ["REGION"],
  to: ["REGION"],
  form: ["FORM"],
  part: ["PART"],
};
