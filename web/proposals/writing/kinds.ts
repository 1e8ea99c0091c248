import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";

/** What can be written, as it stands in the address. */
export const WRITING_KINDS = [
  { id: "claim", kind: "CLAIM", name: "a claim", title: "Propose a claim" },
  { id: "term", kind: "TERM", name: "a term", title: "Propose a term" },
  { id: "source", kind: "SOURCE", name: "a source", title: "Propose a source" },
  { id: "correction", kind: "CORRECTION", name: "a correction", title: "Propose a correction" },
  { id: "exception", kind: "EXCEPTION", name: "an exception", title: "Propose an exception" },
  { id: "retirement", kind: "RETIREMENT", name: "a retirement", title: "Propose that something goes" },
  { id: "merge", kind: "MERGE", name: "a merge of two terms", title: "Propose that two terms are one" },
] as const satisfies readonly { id: string; kind: ProposalKind; name: string; title: string }[];
export type WritingKind = (typeof WRITING_KINDS)[number];

/** Fields that an address may fill in. */
export const FILLED_BY_ADDRESS = [
  "subject",
  "region",
  "form",
  "part",
  "relation",
  "of",
  "about",
  "into",
  "kind",
] as const;
