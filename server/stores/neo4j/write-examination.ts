import { randomUUID } from "node:crypto";
import { hashOfVersion } from "../../chain/link-written.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Examination } from "../../domain/examination.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { type ExaminationWrite, nextVersion } from "../../domain/next-version.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Along } from "../../ports/store.ts";
import { planCards } from "./cards.ts";
import { NO_CONTENT } from "./content.ts";
import type { Database } from "./database.ts";
import { findExamination } from "./examinations.ts";
import { lineAfter } from "./store-state.ts";
import { writePlanned } from "./write-planned.ts";

/** Adds a version to an examination, or says why not. */
export function writeExamination(
  database: Database,
  id: ExaminationId,
  write: ExaminationWrite,
  { cards = [], deed }: Along = {},
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
      const planned = await planCards(run, cards);
      if (isProblem(planned)) return planned;
      const examination = { id, version: next.version };
      return {
        content: { ...NO_CONTENT, examinations: [next] },
        revision: state.revision,
        lines: [
          lineAfter(
            state,
            { examination, cards: planned.written, deed },
            { examination: hashOfVersion(next) },
          ),
        ],
        cards: planned,
        answer: deepFreeze(next),
      };
    },
    async (run, { examination }) => {
      const written = await findExamination(run, id, examination?.version);
      if (written === undefined) throw new Error(`A version of ${id} was written and is gone`);
      return written;
    },
    "little",
  );
}
