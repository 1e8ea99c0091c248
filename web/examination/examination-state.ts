import type { Piece } from "#server/domain/examination.ts";
import { keepSame } from "#web/strips/keep-same.ts";
import type { ProblemFieldsFragment } from "./Examination.graphql.ts";
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
  standing: { kind: "saved" },
});

/** The person changed something: it is shown at once and on its way. */
export const withEdit = (state: ExaminationState, piece: Piece): ExaminationState => ({
  ...state,
  piece,
  standing: { kind: "saving" },
});

/**
 * A reply to what was `sent` came. What the person did since then stays on the screen; `isMore` tells that it has still
 * to be sent.
 */
export function withReply(
  state: ExaminationState,
  sent: Piece,
  reply: Reply,
): { readonly state: ExaminationState; readonly isMore: boolean } {
  const isMore = state.piece !== sent;
  switch (reply.kind) {
    case "changed":
      return {
        isMore,
        state: {
          stored: withSameAnswer(state.stored, reply.examination),
          piece: isMore ? state.piece : keepSame(state.piece, reply.examination.piece),
          standing: { kind: isMore ? "saving" : "saved" },
        },
      };
    case "refused":
      return {
        isMore: false,
        state: {
          ...state,
          standing: reply.current
            ? { kind: "changed-meanwhile", theirs: reply.current }
            : { kind: "refused", problems: reply.problems },
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
