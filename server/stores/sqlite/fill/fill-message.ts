import type { Authorship } from "../../../chain/link-revision.ts";
import type { Edit } from "../../../domain/change.ts";
import type { Problem } from "../../../domain/problem.ts";
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

/** What a revision adds, in the order of its change. */
export interface FilledRevision {
  readonly authorship: Authorship;
  readonly kinds: readonly Edit["kind"][];
  /** The canonical JSON of each thing. */
  readonly bodies: readonly (string | undefined)[];
  /** In place of each body is where it stands in `bodies`, so that it is handed over once. */
  readonly rows: ManyRows;
  readonly more: Tally;
}

/** Said to the thread; it answers each in turn with what refused it, or nothing. */
export type FillMessage = FilledRevision | "end";
export type FillAnswer = { readonly refusal?: Problem };
