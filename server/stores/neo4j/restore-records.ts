import { randomUUID } from "node:crypto";
import { checkCommit } from "../../chain/check-commit.ts";
import { checkDump } from "../../chain/check-dump.ts";
import { changeDoesNotFit, storeNotEmpty } from "../../chain/refusals.ts";
import type { Card } from "../../domain/card.ts";
import type { Change } from "../../domain/change.ts";
import type { DumpRecord } from "../../domain/dump.ts";
import type { Examination } from "../../domain/examination.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision } from "../../domain/revision.ts";
import type { Tally } from "../../domain/tally.ts";
import type { Written } from "../../domain/written.ts";
import type { PlannedCards } from "./cards.ts";
import { type Content, contentOf, NO_CONTENT } from "./content.ts";
import type { Database } from "./database.ts";
import { standingGraph } from "./standing-graph.ts";
import { type Step, stepsOf } from "./write-content.ts";
import { type Ending, writePlanned } from "./write-planned.ts";
import { newestWrite } from "./writes.ts";

type Restored = { readonly records: number };

/** What is read of a dump and not yet written. */
type Piece = Content | Problem;

/**
 * Makes every change of a dump anew while it is read, and puts the rest in; into an empty store only. A small dump is
 * one transaction; of a large one no more than a few revisions are in memory beside what the check of the next one needs.
 */
export async function restoreRecords(
  database: Database,
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
): Promise<Restored | Problem> {
  if ((await newestWrite(database)) > 0) return storeNotEmpty();
  const read = readDump(records, database.limits.rowsAtOnce);
  try {
    const { value: first = NO_CONTENT } = await read.contents.next();
    return isProblem(first) ? first : await writeDump(database, first, read);
  } finally {
    await read.contents.return(undefined);
  }
}

/** A large dump is written while it is read; a small one was read to its end for its first and only piece. */
async function writeDump(database: Database, first: Content, read: DumpRead): Promise<Restored | Problem> {
  const isSmall = read.hasEnded();
  if (isSmall && read.lines().length === 0) return read.done();
  return writePlanned<Restored>(
    database,
    randomUUID(),
    async (_, state) => {
      if (state.sequence > 0) return storeNotEmpty();
      if (!isSmall) return { steps: stepsIn(first, read, database), ending: read.ending };
      const { examinations, ...ending } = read.ending();
      return { content: { ...first, examinations }, ...ending };
    },
    async () => read.done(),
    "much",
  );
}

async function* stepsIn(
  first: Content,
  read: DumpRead,
  { limits }: Database,
): AsyncGenerator<Step | Problem> {
  yield* stepsOf(first, [], limits.rowsAtOnce);
  for await (const piece of read.contents) {
    if (isProblem(piece)) {
      yield piece;
      return;
    }
    yield* stepsOf(piece, [], limits.rowsAtOnce);
  }
  yield* stepsOf({ ...NO_CONTENT, examinations: read.examinations() }, read.lines(), limits.rowsAtOnce);
}

/** A dump while it is read; what does not belong to a revision is known when it has ended. */
interface DumpRead {
  /** The revisions, some at a time; a refusal is the last. */
  readonly contents: AsyncGenerator<Piece, undefined>;
  hasEnded(): boolean;
  examinations(): readonly Examination[];
  lines(): readonly Written[];
  ending(): Ending<Restored>;
  done(): Restored;
}

/** Begins to read and check a dump; `editsAtOnce` are handed out together, about. */
export function readDump(
  records: AsyncIterable<DumpRecord> | Iterable<DumpRecord>,
  editsAtOnce: number,
): DumpRead {
  const check = checkDump();
  const graph = standingGraph();
  const examinations: Examination[] = [];
  const cards: Card[] = [];
  let chunk: { readonly revision: Revision; readonly change: Change }[] = [];
  let [edits, newest] = [0, 0];
  let tally: Tally = {};
  let end: { readonly records: number; readonly writes: readonly Written[] } | undefined;

  const take = (): Content => {
    const content = contentOf(chunk, tally);
    tally = content.revisions.at(-1)?.tally ?? tally;
    [chunk, edits] = [[], 0];
    return content;
  };
  async function* contents(): AsyncGenerator<Piece, undefined> {
    for await (const record of records) {
      const refusal = check.take(record) ?? findUnfit(record);
      if (refusal !== undefined) {
        yield refusal;
        return undefined;
      }
      if (record.kind === "examination") examinations.push(record.examination);
      else if (record.kind === "card") cards.push(record.card);
      else if (record.kind === "revision") {
        graph.apply(record.change);
        chunk.push(record);
        edits += record.change.length;
        newest = record.revision.number;
        if (edits > editsAtOnce) yield take();
      }
    }
    const ended = check.end();
    if (!isProblem(ended)) end = ended;
    yield isProblem(ended) ? ended : take();
    return undefined;
  }
  function findUnfit(record: DumpRecord): Problem | undefined {
    if (record.kind !== "revision") return undefined;
    const refusal = checkCommit(graph.view, record.revision.number - 1, record.change, undefined);
    return refusal && changeDoesNotFit(record.revision.number, refusal);
  }
  const done = (): Restored => ({ records: end?.records ?? 0 });
  const lines = (): readonly Written[] => end?.writes ?? [];
  const planned = (): PlannedCards => ({
    puts: new Map(cards.map((card) => [`${card.kind} ${card.id}`, { ...card, card }])),
    written: [],
  });
  return {
    ...{ contents: contents(), lines, done },
    hasEnded: () => end !== undefined,
    examinations: () => examinations,
    ending: () => ({ revision: newest, lines: lines(), cards: planned(), examinations, answer: done() }),
  };
}
