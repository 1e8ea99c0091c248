import { createHash } from "node:crypto";
import type { Card } from "../domain/card.ts";
import { DUMP_FORMAT, DUMP_VERSION, type DumpCounts, type DumpRecord } from "../domain/dump.ts";
import type { Examination } from "../domain/examination.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import type { Written } from "../domain/written.ts";
import { findBrokenLedger, keyOfVersion } from "./find-broken-ledger.ts";
import { findBrokenLink } from "./find-broken-link.ts";
import { hashOfVersion, linkWritten } from "./link-written.ts";
import { dumpLine } from "./seal-dump.ts";

/** Looks at a dump record by record; what it has let through is sound only once the end is. */
export interface DumpCheck {
  /** Why the next record cannot stand here. */
  take(record: DumpRecord): Problem | undefined;
  /**
   * Records read, header and trailer included, and the ledger, which in a dump of version 1 is a single write that stands for
   * all of it; or why the dump is not whole.
   */
  end(): { readonly records: number; readonly writes: readonly Written[] } | Problem;
}

/**
 * Checks the order of a dump, its chains of hashes and its trailer while it is read. Refuses `OTHER_VERSION` or
 * `DAMAGED_DUMP`, with the number of the record as path. Whether each change fits the one before is for the store.
 */
export function checkDump(): DumpCheck {
  const hash = createHash("sha256");
  const revisions: string[] = [];
  const versions = new Map<string, string>();
  const cards: Card[] = [];
  const writes: Written[] = [];
  let [records, version, isClosed] = [0, DUMP_VERSION as number, false];
  let reached: DumpRecord["kind"] = "header";
  let last: { readonly revision?: Revision; readonly examination?: Examination; readonly card?: Card } = {};

  /** What is wrong with a record. */
  function findFault(record: DumpRecord): string | undefined {
    if (isClosed) return "there is more after the trailer";
    if ((records === 1) !== (record.kind === "header"))
      return records === 1 ? "the header is missing" : "a second header";
    if (ORDER.indexOf(record.kind) < ORDER.indexOf(reached)) return `a ${record.kind} after a ${reached}`;
    reached = record.kind;
    const before = last;
    if (record.kind !== "header" && record.kind !== "trailer") last = { ...last, ...record };
    switch (record.kind) {
      case "header":
        version = record.version;
        return record.format === DUMP_FORMAT ? undefined : `the format is not ${DUMP_FORMAT}`;
      case "revision": {
        const broken = findBrokenLink(record.revision, record.change, before.revision);
        revisions.push(record.revision.hash);
        return broken && `revision ${record.revision.number} is broken: ${broken}`;
      }
      case "examination":
        versions.set(keyOfVersion(record.examination), hashOfVersion(record.examination));
        return findGap(before.examination, record.examination);
      case "card":
        cards.push(record.card);
        return before.card === undefined || isAfter(record.card, before.card)
          ? undefined
          : `the card ${record.card.kind} ${record.card.id} is out of order`;
      case "write":
        writes.push(record.write);
        return undefined;
      case "trailer":
        return findMismatch(record);
    }
  }
  function findMismatch(trailer: Extract<DumpRecord, { kind: "trailer" }>): string | undefined {
    isClosed = true;
    const isOld = version === 1;
    if (isOld && cards.length + writes.length > 0) return "a dump of version 1 holds no cards and no writes";
    const held: readonly (readonly [keyof DumpCounts, number])[] = [
      ["revisions", revisions.length],
      ["examinations", versions.size],
      ...(isOld ? [] : [["cards", cards.length] as const, ["writes", writes.length] as const]),
    ];
    for (const [name, count] of held)
      if (trailer[name] !== count)
        return `the trailer counts ${trailer[name] ?? 0} ${name}, the dump holds ${count}`;
    if (trailer.sha256 !== hash.digest("hex")) return "the lines do not match the trailer's hash";
    return isOld ? undefined : findBrokenLedger({ revisions, versions, cards, writes });
  }
  /** What came before there was a ledger counts as one restore. */
  function oldLedger(): readonly Written[] {
    if (revisions.length + versions.size === 0) return [];
    const revision = revisions.length === 0 ? undefined : revisions.length;
    const made = { revision: revisions.at(-1), examinations: [...versions.values()] };
    return [linkWritten({ revision, restored: true }, made, undefined)];
  }

  return {
    take: (record) => {
      records++;
      const fault = findFault(record);
      if (fault !== undefined)
        return damaged(`Line ${records} of the dump: ${fault}. Nothing was restored; use an undamaged copy.`);
      if (record.kind === "header" && !(version >= 1 && version <= DUMP_VERSION))
        return otherVersion(version);
      if (!isClosed) hash.update(dumpLine(record));
      return undefined;
    },
    end: () =>
      isClosed
        ? { records, writes: version === 1 ? oldLedger() : writes }
        : damaged(
            `The dump breaks off after ${records} lines, before its trailer. Nothing was restored; use a whole copy.`,
          ),
  };

  function damaged(message: string): Problem {
    return problem("DAMAGED_DUMP", message, [records]);
  }
}

const ORDER: readonly DumpRecord["kind"][] = [
  "header",
  "revision",
  "examination",
  "card",
  "write",
  "trailer",
];

const isAfter = (card: Card, last: Card): boolean =>
  card.kind === last.kind ? card.id > last.id : card.kind > last.kind;

const otherVersion = (version: number): Problem =>
  problem(
    "OTHER_VERSION",
    `The dump is of format version ${version}, and this program reads versions up to ${DUMP_VERSION}; restore it with the program that wrote it.`,
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
