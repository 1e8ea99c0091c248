import type { Deed } from "./deed.ts";
import type { ExaminationId } from "./ids.ts";
import type { RevisionNumber } from "./revision.ts";

/** A card as a write left it; without a hash it was taken away. `version` is that of the card, or the last it had. */
export interface WrittenCard {
  readonly kind: string;
  readonly id: string;
  readonly version: number;
  /** SHA-256, hex, of the canonical JSON of the card. */
  readonly hash?: string;
}

/** What a write wrote, and who did it. */
export interface WriteNote {
  /** The revision that a commit made. */
  readonly revision?: RevisionNumber | undefined;
  readonly examination?: { readonly id: ExaminationId; readonly version: number } | undefined;
  /** A restore of a dump without a ledger: everything up to `revision` (left out at none), and all examinations. */
  readonly restored?: true | undefined;
  /** Left out where there are none. */
  readonly cards?: readonly WrittenCard[] | undefined;
  readonly deed?: Deed | undefined;
}

/**
 * One accepted write, chained to the one before by its hash: a commit, a version of an examination, some cards, or several of
 * them at once; or a whole restore. All of them are the ledger of the store.
 */
export interface Written extends WriteNote {
  /** 1, 2, 3 … in the order in which the writes were kept, without a gap. */
  readonly sequence: number;
  /** SHA-256, hex, of the canonical JSON of `{revision, examination}`: the hashes of the revision and of the version made. */
  readonly content: string;
  /** Hash of the write before; 64 zeros for the first. */
  readonly previous: string;
  /** SHA-256, hex, of the canonical JSON of all the fields above. */
  readonly hash: string;
}
