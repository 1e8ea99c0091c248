import { randomUUID } from "node:crypto";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { type ExaminationWrite, nextVersion } from "../../domain/next-version.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import { NO_CONTENT } from "./content.ts";
import type { Database } from "./database.ts";
import { findExamination } from "./examinations.ts";
import { writePlanned } from "./write-planned.ts";

/** Adds a version to an examination, or says why not. */
export function writeExamination(
  database: Database,
  id: ExaminationId,
  write: ExaminationWrite,
): Promise<Examination | Problem> {
  return writePlanned<Examination>(
    database,
    randomUUID(),
    async (run, state) => {
      const newest = await findExamination(run, id);
      const target =
        write.does === "undo" && newest?.undoTo !== undefined
          ? await findExamination(run, id, newest.undoTo)
          : undefined;
      const next = nextVersion(id, (version) => (version === undefined ? newest : target), write);
      if (isProblem(next)) return next;
      return {
        content: { ...NO_CONTENT, examinations: [next] },
        revision: state.revision,
        note: { examination: id, version: next.version },
        answer: deepFreeze(next),
      };
    },
    async (run, { version }) => {
      const written = await findExamination(run, id, version);
      if (written === undefined) throw new Error(`Version ${version} of ${id} was written and is gone`);
      return written;
    },
  );
}
