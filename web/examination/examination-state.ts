import type { Piece } from "#server/domain/examination.ts";
import { isSame } from "#server/domain/is-same.ts";
import { mergePieces } from "#server/domain/merge-pieces/merge-pieces.ts";
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
  | { readonly kind: "unreachable"; readonly says: string };

/** What I made of a piece where somebody else made something else of the same things. */
export interface Collision {
  readonly base: Piece;
  readonly mine: Piece;
}

export interface ExaminationState {
  readonly stored: StoredExamination;
  /** What the page shows: at once what the person did, whether stored or not. */
  readonly piece: Piece;
  readonly standing: Standing;
  /** To be decided, the oldest first. Until then theirs is shown there, and all else of mine is kept. */
  readonly collisions: readonly Collision[];
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
  collisions: [],
});

/**
 * The person changed something: it is shown at once and on its way. `since` is the piece that they saw when they began, where others may
 * have changed it meanwhile.
 */
export function withEdit(state: ExaminationState, edit: Edit, since = state.piece): ExaminationState {
  const edited = bringTogether(state, since, edit(since), state.piece);
  return { ...edited, standing: isSame(edited.piece, state.piece) ? state.standing : { kind: "saving" } };
}

/**
 * A reply came to a request that took along the piece `sent`. What the person did since then stays on the screen, brought together with
 * what is stored now; `isMore` tells that it has still to be sent.
 */
export function withReply(
  state: ExaminationState,
  sent: Piece,
  reply: Reply,
): { readonly state: ExaminationState; readonly isMore: boolean } {
  const isMoreDone = state.piece !== sent;
  switch (reply.kind) {
    case "changed":
      return withStored(state, sent, reply.examination);
    case "refused": {
      const { problems, current } = reply;
      const after = current ? withStored(state, state.stored.piece, current) : { state, isMore: isMoreDone };
      if (current && problems.every(({ code }) => code === "CHANGED_MEANWHILE")) return after;
      // What was done since may have mended it.
      const standing: Standing = isMoreDone ? { kind: "saving" } : { kind: "refused", problems };
      return { isMore: isMoreDone, state: { ...after.state, standing } };
    }
    case "unreachable":
      return { isMore: false, state: { ...state, standing: { kind: "unreachable", says: reply.says } } };
  }
}

/** Somebody else stored something, and nothing of mine is under way: what I could not store yet stays beside it. */
export const withTheirs = (state: ExaminationState, theirs: StoredExamination): ExaminationState => ({
  ...withStored(state, state.stored.piece, theirs).state,
  standing: state.standing,
});

/** The first collision is decided: mine stands after all, or theirs stays. */
export function withDecision(state: ExaminationState, mine: Edit | undefined): ExaminationState {
  const decided = { ...state, collisions: state.collisions.slice(1) };
  return mine === undefined ? decided : withEdit(decided, mine);
}

/** What is stored now, beside what is shown; both come from `base`. */
function withStored(
  state: ExaminationState,
  base: Piece,
  stored: StoredExamination,
): { readonly state: ExaminationState; readonly isMore: boolean } {
  const together = bringTogether(state, base, state.piece, stored.piece);
  const isMore = !isSame(together.piece, stored.piece);
  return {
    isMore,
    state: {
      ...together,
      stored: withSameAnswer(state.stored, stored),
      standing: { kind: isMore ? "saving" : "saved" },
    },
  };
}

function bringTogether(
  state: ExaminationState,
  base: Piece,
  mine: Piece,
  theirs: Piece,
): Pick<ExaminationState, "stored" | "piece" | "collisions"> {
  const { piece, conflicts } = mergePieces(base, mine, theirs);
  return {
    stored: state.stored,
    piece: keepSame(state.piece, piece),
    collisions: conflicts.length === 0 ? state.collisions : [...state.collisions, { base, mine }],
  };
}

/** What the new answer says as before stays the same object, so that what shows it is not drawn again. */
const withSameAnswer = (old: StoredExamination, fresh: StoredExamination): StoredExamination => ({
  ...fresh,
  answer: keepSame(old.answer, fresh.answer),
  form: keepSame(old.form, fresh.form),
});

/** True where an undo has something to take back: a change not stored, or a stored one. */
export const canUndo = ({ stored, standing, collisions }: ExaminationState): boolean =>
  collisions.length === 0 &&
  (standing.kind === "refused" ||
    standing.kind === "unreachable" ||
    (standing.kind === "saved" && stored.canUndo));
