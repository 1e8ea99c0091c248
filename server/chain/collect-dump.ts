import type { Card } from "../domain/card.ts";
import type { Change } from "../domain/change.ts";
import type { DumpRecord } from "../domain/dump.ts";
import type { Examination } from "../domain/examination.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import type { Written } from "../domain/written.ts";
import { checkDump } from "./check-dump.ts";

/** What a whole, sound dump holds. */
export interface DumpContent {
  readonly revisions: readonly { readonly revision: Revision; readonly change: Change }[];
  /** Sorted by id and version. */
  readonly examinations: readonly Examination[];
  /** Sorted by kind and id. */
  readonly cards: readonly Card[];
  /** The ledger. */
  readonly writes: readonly Written[];
  /** Records read, header and trailer included. */
  readonly records: number;
}

/** Reads a dump to its end, all of it into memory, and refuses what `checkDump` refuses. */
export async function collectDump(
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
): Promise<DumpContent | Problem> {
  const revisions: { revision: Revision; change: Change }[] = [];
  const examinations: Examination[] = [];
  const cards: Card[] = [];
  const check = checkDump();
  for await (const record of records) {
    const refusal = check.take(record);
    if (refusal !== undefined) return refusal;
    if (record.kind === "revision") revisions.push({ revision: record.revision, change: record.change });
    if (record.kind === "examination") examinations.push(record.examination);
    if (record.kind === "card") cards.push(record.card);
  }
  const end = check.end();
  return isProblem(end) ? end : { revisions, examinations, cards, ...end };
}
