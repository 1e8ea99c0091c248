import { createHash } from "node:crypto";
import { DUMP_FORMAT, DUMP_VERSION, type DumpRecord } from "../domain/dump.ts";
import type { Examination } from "../domain/examination.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import { findBrokenLink } from "./find-broken-link.ts";
import { dumpLine } from "./seal-dump.ts";

/** Looks at a dump record by record; what it has let through is sound only once the end is. */
export interface DumpCheck {
  /** Why the next record cannot stand here. */
  take(record: DumpRecord): Problem | undefined;
  /** Records read, header and trailer included, or why the dump is not whole. */
  end(): { readonly records: number } | Problem;
}

/**
 * Checks the order of a dump, its chain of hashes and its trailer while it is read. Refuses `OTHER_VERSION` or
 * `DAMAGED_DUMP`, with the number of the record as path. Whether each change fits the one before is for the store.
 */
export function checkDump(): DumpCheck {
  const hash = createHash("sha256");
  const counts = { revisions: 0, examinations: 0 };
  let [records, isClosed] = [0, false];
  let revision: Revision | undefined;
  let examination: Examination | undefined;

  /** What is wrong with a record. */
  function findFault(record: DumpRecord): string | undefined {
    if (isClosed) return "there is more after the trailer";
    if ((records === 1) !== (record.kind === "header"))
      return records === 1 ? "the header is missing" : "a second header";
    if (record.kind === "header")
      return record.format === DUMP_FORMAT ? undefined : `the format is not ${DUMP_FORMAT}`;
    if (record.kind === "examination") {
      const gap = findGap(examination, record.examination);
      examination = record.examination;
      counts.examinations++;
      return gap;
    }
    if (record.kind === "trailer") return findMismatch(record);
    if (examination !== undefined) return "a revision after the examinations";
    const broken = findBrokenLink(record.revision, record.change, revision);
    revision = record.revision;
    counts.revisions++;
    return broken && `revision ${record.revision.number} is broken: ${broken}`;
  }
  function findMismatch(trailer: Extract<DumpRecord, { kind: "trailer" }>): string | undefined {
    isClosed = true;
    const { revisions, examinations } = counts;
    if (trailer.revisions !== revisions || trailer.examinations !== examinations)
      return `the trailer counts ${trailer.revisions} revisions and ${trailer.examinations} versions of examinations, the dump holds ${revisions} and ${examinations}`;
    return trailer.sha256 === hash.digest("hex") ? undefined : "the lines do not match the trailer's hash";
  }

  return {
    take: (record) => {
      records++;
      const fault = findFault(record);
      if (fault !== undefined)
        return damaged(`Line ${records} of the dump: ${fault}. Nothing was restored; use an undamaged copy.`);
      if (record.kind === "header" && record.version !== DUMP_VERSION) return otherVersion(record.version);
      if (!isClosed) hash.update(dumpLine(record));
      return undefined;
    },
    end: () =>
      isClosed
        ? { records }
        : damaged(
            `The dump breaks off after ${records} lines, before its trailer. Nothing was restored; use a whole copy.`,
          ),
  };

  function damaged(message: string): Problem {
    return problem("DAMAGED_DUMP", message, [records]);
  }
}

const otherVersion = (version: number): Problem =>
  problem(
    "OTHER_VERSION",
    `The dump is of format version ${version}, and this program reads version ${DUMP_VERSION}; restore it with the program that wrote it.`,
    ["version"],
  );

/** What is wrong with an examination that stands behind `last`. */
function findGap(last: Examination | undefined, next: Examination): string | undefined {
  const name = `version ${next.version} of examination ${next.id}`;
  if (last?.id === next.id ? next.version !== last.version + 1 : next.version !== 1)
    return `${name} does not follow the version before`;
  if (last !== undefined && next.id < last.id) return `${name} is out of order`;
  if (next.undoTo !== undefined && next.undoTo >= next.version) return `${name} undoes to a later version`;
  return undefined;
}
