import type { ProposalKind, ProposalState, Verdict } from "../shared/apollo/schema-types.graphql.ts";

/** What a proposal is about. */
export const kindWords: Readonly<Record<ProposalKind, string>> = {
  CLAIM: "new claim",
  TERM: "new term",
  SOURCE: "new source",
  CORRECTION: "correction",
  EXCEPTION: "exception",
  RETIREMENT: "retirement",
  MERGE: "merge of two terms",
};

/** Where it stands, as the rest of a sentence that begins with "It". */
export const stateWords: Readonly<Record<ProposalState, string>> = {
  DRAFT: "a draft, seen by its maker alone",
  OPEN: "open and waits for a reviewer",
  CHANGES_ASKED_FOR: "to be changed by its maker",
  ACCEPTED: "accepted",
  DECLINED: "declined",
  SUPERSEDED: "superseded by another",
  WITHDRAWN: "withdrawn by its maker",
};

/** What a reviewer said. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  ACCEPT: "agreed",
  ASK_FOR_CHANGES: "asked for changes",
  DECLINE: "declined",
  SUPERSEDE: "superseded it",
};
