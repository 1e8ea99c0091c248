import type { Attribution, Observation, Piece } from "#server/domain/examination.ts";

/** One thing done to a piece to see what follows: another claim, something seen otherwise, or no longer. */
export interface Change {
  /** What is claimed instead; what is not named stays. */
  readonly claimed?: Readonly<Partial<Record<keyof Attribution, string>>>;
  /** Observations that are added, or take the place of those with the same id. */
  readonly seen?: readonly ObservationAsWritten[];
  /** Ids of observations that are taken away. */
  readonly without?: readonly string[];
}

/** An observation as a file holds it: sure unless it says otherwise. */
export type ObservationAsWritten = {
  readonly [K in "id" | "part" | "feature"]: string;
} & { readonly seen: Observation["seen"]; readonly sureness?: Observation["sureness"] };

/** A change that can be chosen, and what it is called. */
export interface Turn {
  readonly id: string;
  readonly says: string;
  readonly change: Change;
}

/** The piece after a change; the piece given stays as it is. */
export function turnPiece(piece: Piece, { claimed = {}, seen = [], without = [] }: Change): Piece {
  const written = seen.map((each) => ({ sureness: "sure", ...each }) as Observation);
  const gone = new Set([...without, ...seen.map((each) => each.id)]);
  const places = new Map(piece.observations.map((each, at) => [String(each.id), at]));
  const kept = piece.observations.filter((each) => !gone.has(each.id));
  const at = (each: Observation) => places.get(each.id) ?? piece.observations.length;
  return {
    ...piece,
    attribution: { ...piece.attribution, ...(claimed as Partial<Attribution>) },
    observations: [...kept, ...written].sort((a, b) => at(a) - at(b)),
  };
}
