import type { Problem } from "../../../domain/problem.ts";
import type { Revision } from "../../../domain/revision.ts";
import type { Tally } from "../../../domain/tally.ts";
import type { ManyRows } from "../insert-rows.ts";

/** What the thread that fills a file is given when it starts. */
export interface FillAsked {
  readonly path: string;
  /** How long to wait for another program, in milliseconds. */
  readonly patience: number;
  /** Pages that the file may have; as many as there is room for, where it is not said. */
  readonly mostPages?: number;
}

/** A revision that is to be written as it is, and what it adds. */
export interface FilledRevision {
  readonly revision: Revision;
  /** The canonical JSON of its change. */
  readonly text: string;
  readonly rows: ManyRows;
  readonly more: Tally;
  readonly edits: number;
}

/** Said to the thread; it answers each in turn with what refused it, or nothing. */
export type FillMessage = FilledRevision | "end";
export type FillAnswer = { readonly refusal?: Problem };
