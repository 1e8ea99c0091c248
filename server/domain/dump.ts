import type { Card } from "./card.ts";
import type { Change } from "./change.ts";
import type { Examination } from "./examination.ts";
import type { Revision } from "./revision.ts";
import type { Written } from "./written.ts";

export const DUMP_FORMAT = "scribeline/dump";
/** The version that is written. Version 1 has no cards and no writes, and is read too. */
export const DUMP_VERSION = 2;

/**
 * One line of a dump (JSON Lines, each line canonical JSON). Order: header; every revision with its change, oldest
 * first; every version of every examination by id and version; every card by kind and id; every write of the ledger, oldest
 * first; trailer. All else follows from the changes.
 */
export type DumpRecord =
  | { readonly kind: "header"; readonly format: typeof DUMP_FORMAT; readonly version: number }
  | DumpedThing
  | ({
      readonly kind: "trailer";
      /** SHA-256, hex, of all lines before this one, each with its line feed. */
      readonly sha256: string;
    } & DumpCounts);

/** What stands between header and trailer. */
export type DumpedThing =
  | { readonly kind: "revision"; readonly revision: Revision; readonly change: Change }
  | { readonly kind: "examination"; readonly examination: Examination }
  | { readonly kind: "card"; readonly card: Card }
  | { readonly kind: "write"; readonly write: Written };

/** How many of each there are; the last two are left out in version 1. */
export interface DumpCounts {
  readonly revisions: number;
  /** Versions of examinations. */
  readonly examinations: number;
  readonly cards?: number;
  readonly writes?: number;
}
