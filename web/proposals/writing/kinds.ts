import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";

/** What can be written, as it stands in the address. A correction is also where an exception and a retirement begin. */
export const WRITING_KINDS = [
  { id: "claim", kind: "CLAIM", name: "a claim", title: "Propose a claim" },
  { id: "term", kind: "TERM", name: "a term", title: "Propose a term" },
  { id: "source", kind: "SOURCE", name: "a source", title: "Propose a source" },
  { id: "correction", kind: "CORRECTION", name: "a correction", title: "Put something right" },
  { id: "merge", kind: "MERGE", name: "that two terms are one", title: "Propose that two terms are one" },
] as const satisfies readonly { id: string; kind: ProposalKind; name: string; title: string }[];
export type WritingKind = (typeof WRITING_KINDS)[number];

/** Fields that an address may fill in. */
export const FILLED_BY_ADDRESS = [
  ...["subject", "region", "form", "part", "relation", "about", "into", "wrong"],
] as const;
