import type { Change } from "../change.ts";
import type { RevisionNumber } from "../revision.ts";
import type { FormFields } from "./form/form-fields.ts";

/** What a proposal is about, as whoever makes it says. */
export const PROPOSAL_KINDS = [
  "claim",
  "term",
  "source",
  "correction",
  "exception",
  "retirement",
  "merge",
] as const;
export type ProposalKind = (typeof PROPOSAL_KINDS)[number];

/** Where a proposal stands. The last four are its end. */
export const PROPOSAL_STATES = [
  "draft",
  "open",
  "changes asked for",
  "accepted",
  "declined",
  "superseded",
  "withdrawn",
] as const;
export type ProposalState = (typeof PROPOSAL_STATES)[number];

/** States in which it waits for something. */
export const UNDECIDED: readonly ProposalState[] = ["draft", "open", "changes asked for"];
/** Whether only its maker sees a proposal: it was never handed in. */
export const isPrivate = ({ state, neverOpened }: Pick<Proposal, "state" | "neverOpened">): boolean =>
  state === "draft" || neverOpened === true;
export const isUndecided = ({ state }: Pick<Proposal, "state">): boolean => UNDECIDED.includes(state);

/** A change of the graph that somebody asks for. */
export interface Proposal {
  readonly kind: ProposalKind;
  /** In a few words what it is. */
  readonly title: string;
  /** Why the graph should change, for those who decide. */
  readonly why: string;
  readonly change: Change;
  /** What stands in the form it is written in, so that its maker can go on. */
  readonly form?: FormFields;
  /** The revision it was made on. */
  readonly base: RevisionNumber;
  readonly state: ProposalState;
  /** It was taken back as a draft. */
  readonly neverOpened?: true;
  /** The person who made it. */
  readonly by: string;
  /** ISO 8601 times in UTC. */
  readonly madeAt: string;
  readonly changedAt: string;
  /** House and proposal that it came from. */
  readonly origin?: string;
  /** Revision that accepting it made. */
  readonly revision?: RevisionNumber;
  /** The proposal that took its place. */
  readonly supersededBy?: string;
}
