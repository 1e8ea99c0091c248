import type { ExaminationId } from "../../domain/ids.ts";

/**
 * Where an examination stands in the order in which many are looked at: 31 bits that follow from its id and do not tell it (FNV-1a),
 * so that whoever goes on from there learns nothing of a piece that they may not see. Two can have one place.
 */
export function placeInLooking(id: ExaminationId): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < id.length; i++) hash = Math.imul(hash ^ id.charCodeAt(i), 0x01000193);
  return hash >>> 1;
}
