import type { Attribution, Observation, Part, Piece } from "#server/domain/examination.ts";
import type { ObservationId, PartId } from "#server/domain/ids.ts";
import type { Conflict } from "#server/domain/merge-pieces/merge-value.ts";
import {
  changeAttribution,
  changeObservation,
  changePart,
  type Edit,
  removeObservation,
  removePart,
} from "./edit-piece.ts";

/** Makes what is in conflict say what one side made of it, or what stood before. */
export function takeSide(conflict: Conflict, side: "base" | "mine" | "theirs"): Edit {
  const [field = "", id, member] = conflict.path;
  const value = conflict[side];
  if (field === "attribution") return changeAttribution({ [id ?? ""]: value } as Partial<Attribution>);
  if (field === "observations") {
    const name = id as ObservationId;
    if (member !== undefined) return changeObservation(name, { [member]: value } as Partial<Observation>);
    return value === undefined ? removeObservation(name) : put("observations", value as Observation);
  }
  if (field === "parts") {
    const name = id as PartId;
    if (member !== undefined) return changePart(name, { [member]: value } as Partial<Part>);
    return value === undefined ? removePart(name) : put("parts", value as Part);
  }
  return (piece) => {
    const { [field as "note"]: _, ...rest } = piece;
    return (value === undefined ? rest : { ...piece, [field]: value }) as Piece;
  };
}

/** All of them, one after the other. */
export const takeSides = (conflicts: readonly Conflict[], side: "base" | "mine" | "theirs"): Edit =>
  conflicts.reduce<Edit>(
    (before, conflict) => (piece) => takeSide(conflict, side)(before(piece)),
    (piece) => piece,
  );

const put =
  (list: "parts" | "observations", item: Part | Observation): Edit =>
  (piece) => {
    const items: readonly (Part | Observation)[] = piece[list];
    const isThere = items.some(({ id }) => id === item.id);
    return {
      ...piece,
      [list]: isThere ? items.map((each) => (each.id === item.id ? item : each)) : [...items, item],
    };
  };
