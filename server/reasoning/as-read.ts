import type { Claim } from "../domain/claim.ts";
import type { Piece } from "../domain/examination.ts";
import type { Term } from "../domain/term.ts";

/**
 * What the engine reads of a claim, of a term and of a piece: what it does not read can change without another answer.
 * Labels, names and notes are for the words, which are made anew each time.
 */
export const claimAsRead = (claim: Claim): unknown => ({
  ...claim,
  ...{ note: undefined, row: undefined, status: undefined },
  citations: claim.citations.map((citation) => ({ ...citation, note: undefined })),
});

/** Of the features that could be looked for it reads more: hand those over whole. */
export const termAsRead = ({ id, kind, broader }: Term): unknown => ({ id, kind, broader });

export const pieceAsRead = (piece: Piece): unknown => ({
  ...piece,
  ...{ title: undefined, note: undefined, invented: undefined },
  parts: piece.parts.map((part) => ({ ...part, label: undefined })),
  observations: piece.observations.map((observation) => ({ ...observation, note: undefined })),
});
