import type { Change } from "#server/domain/change.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { ExaminationId } from "#server/domain/ids.ts";
import type { RevisionNumber } from "#server/domain/revision.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";

/** A write that a client sends once. Its key is unlike that of any other; what it holds follows from it. */
export type Write = { readonly key: string } & (
  | { readonly does: "commit"; readonly things: number; readonly expected?: RevisionNumber }
  | { readonly does: "create" }
  | { readonly does: "change" | "undo" | "delete"; readonly id: ExaminationId; readonly on: number }
);

/** Room of a page of the file and more, so that a write goes over several. */
const noteOf = (key: string): string => `What ${key} has to say. `.repeat(8 + (key.length % 5) * 30);

/** What a commit adds, all of it or nothing. */
export const changeOf = (key: string, things: number): Change =>
  adding(...Array.from({ length: things }, (_, n) => aTerm(`tool.${key}-${n}`, { note: noteOf(key) })));

/** What a new examination, or a new version of one, holds. */
export const pieceOf = (key: string): Piece => ({ ...aPiece(), title: key, note: noteOf(key) });

/** What a client was told of a write. */
export type Answer =
  | {
      readonly is: "kept";
      readonly revision?: { readonly number: RevisionNumber; readonly hash: string };
      readonly examination?: { readonly id: ExaminationId; readonly version: number };
    }
  /** Nothing was written. */
  | { readonly is: "refused"; readonly code: string }
  /** Nobody knows: no answer came, or one that says that the store was not heard of in time. */
  | { readonly is: "unanswered"; readonly why: string };
