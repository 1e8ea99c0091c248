import type { Examination, Piece } from "./examination.ts";
import type { ExaminationId } from "./ids.ts";
import { type Problem, problem } from "./problem.ts";

/** What is done to an examination. `on` is the version it is done on, `at` the time. */
export type ExaminationWrite =
  | { readonly does: "create"; readonly piece: Piece; readonly at: string }
  | { readonly does: "change"; readonly on: number; readonly piece: Piece; readonly at: string }
  | { readonly does: "delete"; readonly on: number; readonly at: string }
  | { readonly does: "undo"; readonly on: number; readonly at: string };

/**
 * The version that a write makes, or why it is refused. `find` looks up a version of this examination, without a number
 * the newest. Undo is linear: undoing twice goes two changes back, and a change after that starts from there.
 */
export function nextVersion(
  id: ExaminationId,
  find: (version?: number) => Examination | undefined,
  write: ExaminationWrite,
): Examination | Problem {
  const newest = find();
  if (write.does === "create") return newest === undefined ? firstVersion(id, write) : idTaken(id);
  if (newest === undefined) return noExamination(id);
  if (newest.version !== write.on) return changedMeanwhile(newest, write.on);
  const next = { ...newest, version: newest.version + 1, undoTo: newest.version, changedAt: write.at };
  if (write.does === "undo") {
    const target = newest.undoTo === undefined ? undefined : find(newest.undoTo);
    return target === undefined ? nothingToUndo(id) : undone(newest, target, write.at);
  }
  if (newest.deleted)
    return problem("UNKNOWN_EXAMINATION", `Examination ${id} was deleted; undo the deletion first.`);
  return write.does === "delete" ? { ...next, deleted: true } : { ...next, piece: write.piece };
}

const firstVersion = (
  id: ExaminationId,
  { piece, at }: { readonly piece: Piece; readonly at: string },
): Examination => ({ id, version: 1, deleted: false, changedAt: at, piece });

const undone = (newest: Examination, target: Examination, at: string): Examination => ({
  id: newest.id,
  version: newest.version + 1,
  ...(target.undoTo === undefined ? {} : { undoTo: target.undoTo }),
  deleted: target.deleted,
  changedAt: at,
  piece: target.piece,
});

/** The refusal of a write to an examination that there is not. */
export const noExamination = (id: ExaminationId): Problem =>
  problem("UNKNOWN_EXAMINATION", `There is no examination ${id}; look it up in the list.`);

const idTaken = (id: ExaminationId): Problem =>
  problem("DUPLICATE_ID", `There is an examination ${id} already, perhaps a deleted one; choose another id.`);

const nothingToUndo = (id: ExaminationId): Problem =>
  problem("NOTHING_TO_UNDO", `Examination ${id} stands as it was first recorded; there is nothing to undo.`);

const changedMeanwhile = ({ id, version }: Examination, on: number): Problem =>
  problem(
    "CHANGED_MEANWHILE",
    `Examination ${id} was changed meanwhile: this change was made on version ${on}, the newest is ${version}. Read it again and make the change anew.`,
    ["expectedVersion"],
  );
