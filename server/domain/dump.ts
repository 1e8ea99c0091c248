import type { Change } from "./change.ts";
import type { Examination } from "./examination.ts";
import type { Revision } from "./revision.ts";

export const DUMP_FORMAT = "scribeline/dump";
export const DUMP_VERSION = 1;

/**
 * One line of a dump (JSON Lines, each line canonical JSON). Order: header; every revision with its change, oldest
 * first; every version of every examination by id and version; trailer. All else follows from the changes.
 */
export type DumpRecord =
  | { readonly kind: "header"; readonly format: typeof DUMP_FORMAT; readonly version: number }
  | { readonly kind: "revision"; readonly revision: Revision; readonly change: Change }
  | { readonly kind: "examination"; readonly examination: Examination }
  | {
      readonly kind: "trailer";
      readonly revisions: number;
      readonly examinations: number;
      /** SHA-256, hex, of all lines before this one, each with its line feed. */
      readonly sha256: string;
    };
