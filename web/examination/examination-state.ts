import type { Piece } from "#server/domain/examination.ts";
import { keepSame } from "#web/strips/keep-same.ts";
import type { ProblemFieldsFragment } from "./Examination.graphql.ts";
import type { Edit } from "./edit-piece.ts";
import type { StoredExamination } from "./read-answer.ts";

/** How what is shown stands to what is stored. */
export type Standing =
  | { readonly kind: "saved" }
  | { readonly kind: "saving" }
  /** The server refused the piece as shown; it is kept here until it is mended or undone. */
  | { readonly kind: "refused"; readonly problems: readonly ProblemFieldsFragment[] }
  /** No answer came. */
  | { readonly kind: "unreachable"; readonly says: string }
  /** Somebody else changed it meanwhile. */
  | { readonly kind: "changed-meanwhile"; readonly theirs: StoredExamination };

export interface ExaminationState {
  readonly stored: StoredExamination;
  /** What the page shows: at once what the person did, whether stored or not. */
  readonly piece: Piece;
  /** What the person did since the stored piece, oldest first: it can be done again on another piece. */
  readonly pending: readonly Edit[];
  readonly standing: Standing;
}

export type Reply =
  | { readonly kind: "changed"; readonly examination: StoredExamination }
  | {
      readonly kind: "refused";
      readonly problems: readonly ProblemFieldsFragment[];
      readonly current: StoredExamination | null;
    }
  | { readonly kind: "unreachable"; readonly says: string };

export const openState = (stored: StoredExamination): ExaminationState => ({
  stored,
  piece: stored.piece,
  pending: [],
  standing: { kind: "saved" },
});

/** The person changed something: it is shown at once and on its way. */
export const withEdit = (state: ExaminationState, edit: Edit): ExaminationState => ({
  ...state,
  piece: edit(state.piece),
  pending: [...state.pending, edit],
  standing: { kind: "saving" },
});

/**
 * A reply came to a request that took along the first `sent` of the pending edits. What the person did since then stays on the
 * screen, done again on what is stored now; `isMore` tells that it has still to be sent.
 */
export function withReply(
  state: ExaminationState,
  sent: number,
  reply: Reply,
): { readonly state: ExaminationState; readonly isMore: boolean } {
  const since = state.pending.slice(sent);
  const isMore = since.length > 0;
  switch (reply.kind) {
    case "changed": {
      const { piece } = reply.examination;
      return {
        isMore,
        state: {
          stored: withSameAnswer(state.stored, reply.examination),
          piece: keepSame(
            state.piece,
            since.reduce((edited, edit) => edit(edited), piece),
          ),
          pending: since,
          standing: { kind: isMore ? "saving" : "saved" },
        },
      };
    }
    case "refused":
      if (reply.current)
        return {
          isMore: false,
          state: { ...state, standing: { kind: "changed-meanwhile", theirs: reply.current } },
        };
      // What was done since may have mended it.
      return {
        isMore,
        state: {
          ...state,
          standing: isMore ? { kind: "saving" } : { kind: "refused", problems: reply.problems },
        },
      };
    case "unreachable":
      return { isMore: false, state: { ...state, standing: { kind: "unreachable", says: reply.says } } };
  }
}

/** What the new answer says as before stays the same object, so that what shows it is not drawn again. */
const withSameAnswer = (old: StoredExamination, fresh: StoredExamination): StoredExamination => ({
  ...fresh,
  answer: keepSame(old.answer, fresh.answer),
  form: keepSame(old.form, fresh.form),
});

/** True where an undo has something to take back: a change not stored, or a stored one. */
export const canUndo = ({ stored, standing }: ExaminationState): boolean =>
  standing.kind === "refused" ||
  standing.kind === "unreachable" ||
  (standing.kind === "saved" && stored.canUndo);
