import type { Edit } from "../change.ts";
import type { Seal } from "../proof/seal.ts";
import type { RevisionNumber } from "../revision.ts";

/** What a house accepted since a revision, signed, for other houses. It holds no names and no cards. */
export interface SharedChanges extends SharedFields, Seal {}

export interface SharedFields {
  readonly format: "scribeline/changes";
  readonly version: 1;
  /** The revision after which the changes begin, 0 for all, and the one they lead to, each with its hash. */
  readonly since: SharedRevision;
  readonly until: SharedRevision;
  /** ISO 8601 time in UTC. */
  readonly at: string;
  /** One a thing: how it stood at `since` and how it stands at `until`. */
  readonly edits: readonly SharedEdit[];
}

export interface SharedRevision {
  readonly revision: RevisionNumber;
  readonly hash: string;
}

/** An edit with the last revision that touched its thing, and what was said of that. */
export interface SharedEdit {
  readonly edit: Edit;
  readonly revision: RevisionNumber;
  readonly message: string;
}
