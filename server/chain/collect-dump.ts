import { createHash } from "node:crypto";
import type { Change } from "../domain/change.ts";
import { DUMP_FORMAT, DUMP_VERSION, type DumpRecord } from "../domain/dump.ts";
import type { Examination } from "../domain/examination.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import { findBrokenLink } from "./find-broken-link.ts";
import { dumpLine } from "./seal-dump.ts";

/** What a whole, sound dump holds. */
export interface DumpContent {
  readonly revisions: readonly { readonly revision: Revision; readonly change: Change }[];
  /** Sorted by id and version. */
  readonly examinations: readonly Examination[];
  /** Records read, header and trailer included. */
  readonly records: number;
}

/**
 * Reads a dump to its end and checks its order, its chain of hashes and its trailer. Refuses `OTHER_VERSION` or
 * `DAMAGED_DUMP`, with the number of the record as path. Whether each change fits the one before is for the store.
 */
export async function collectDump(
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
): Promise<DumpContent | Problem> {
  const revisions: { revision: Revision; change: Change }[] = [];
  const examinations: Examination[] = [];
  const hash = createHash("sha256");
  let count = 0;
  let isClosed = false;
  for await (const record of records) {
    const refuse = (what: string): Problem =>
      problem(
        "DAMAGED_DUMP",
        `Line ${count} of the dump: ${what}. Nothing was restored; use an undamaged copy.`,
        [count],
      );
    count++;
    if (isClosed) return refuse("there is more after the trailer");
    if ((count === 1) !== (record.kind === "header"))
      return refuse(count === 1 ? "the header is missing" : "a second header");
    switch (record.kind) {
      case "header":
        if (record.format !== DUMP_FORMAT) return refuse(`the format is not ${DUMP_FORMAT}`);
        if (record.version !== DUMP_VERSION) return otherVersion(record.version);
        break;
      case "revision": {
        if (examinations.length > 0) return refuse("a revision after the examinations");
        const broken = findBrokenLink(record.revision, record.change, revisions.at(-1)?.revision);
        if (broken !== undefined) return refuse(`revision ${record.revision.number} is broken: ${broken}`);
        revisions.push({ revision: record.revision, change: record.change });
        break;
      }
      case "examination": {
        const broken = findGap(examinations.at(-1), record.examination);
        if (broken !== undefined) return refuse(broken);
        examinations.push(record.examination);
        break;
      }
      case "trailer":
        if (record.revisions !== revisions.length || record.examinations !== examinations.length)
          return refuse(
            `the trailer counts ${record.revisions} revisions and ${record.examinations} versions of examinations, the dump holds ${revisions.length} and ${examinations.length}`,
          );
        if (record.sha256 !== hash.digest("hex")) return refuse("the lines do not match the trailer's hash");
        isClosed = true;
        continue;
    }
    hash.update(dumpLine(record));
  }
  if (!isClosed)
    return problem(
      "DAMAGED_DUMP",
      `The dump breaks off after ${count} lines, before its trailer. Nothing was restored; use a whole copy.`,
      [count],
    );
  return { revisions, examinations, records: count };
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
