import { isInOrder } from "../domain/canonical-json.ts";
import type { Change, Edit } from "../domain/change.ts";
import { deepFreeze } from "../domain/deep-freeze.ts";
import { frozenCopy, keepFrozen } from "../domain/frozen-copy.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import { readStanding } from "./compare-standing.ts";
import type { ImportIndex } from "./import-index.ts";
import { type Group, openPool } from "./pool.ts";
import type { ImportLine } from "./read-import-line.ts";

export interface WriteOptions {
  readonly lines: AsyncIterable<readonly string[]>;
  /** Where things stand in the file, and how they are to what stands already. */
  readonly index: ImportIndex;
  /** The thing of a line; none where the line is not to be written. */
  readonly read: (text: string, line: number) => ImportLine | undefined;
  readonly by: string;
  readonly message: string;
  readonly now: () => Date;
  /** Told after each revision, with what was written so far. */
  readonly told: (written: WrittenImport) => void;
  /** Whether the target has no other use for what it is given, so that it need not be frozen. */
  readonly isHandedOver?: boolean;
  /** Things of one revision, about. */
  readonly thingsARevision?: number | undefined;
}

/** What was written. */
export interface WrittenImport {
  readonly added: number;
  readonly changed: number;
  readonly revisions: number;
}

const THINGS_A_REVISION = 20_000;

/**
 * Writes what a file brings and does not stand yet, in revisions of bounded size, each whole or not at all. Broken off, it goes
 * on where it was when it is done again. Gives the refusal of the store, with what was kept before it.
 */
export async function writeImport(
  store: ImportTarget,
  options: WriteOptions,
): Promise<{ readonly written: WrittenImport; readonly refusal?: Problem }> {
  const { index, read, thingsARevision = THINGS_A_REVISION, told } = options;
  const pool = openPool(index);
  const written = { added: 0, changed: 0, revisions: 0 };
  let batch: ImportLine[] = [];
  let number = 0;
  /** The revision that is being written while the next is read. */
  let last: Promise<Problem | undefined> = Promise.resolve(undefined);

  const commit = async (change: Change): Promise<Problem | undefined> => {
    const { by, message } = options;
    const about = Object.freeze({ at: options.now().toISOString(), by, change, message });
    const answer = await store.commit(about);
    if (isProblem(answer)) return answer;
    const changed = change.filter(({ before }) => before !== undefined).length;
    written.changed += changed;
    written.added += change.length - changed;
    written.revisions++;
    told(written);
    return undefined;
  };
  /** Begins to write what has come together, when the revision before is written. */
  const keep = async (): Promise<Problem | undefined> => {
    if (batch.length === 0) return last;
    const change = options.isHandedOver
      ? batch.map(({ kind, thing }) => ({ after: thing, kind }) as Edit)
      : await changeOf(store, index, batch);
    const refusal = await last;
    if (refusal !== undefined) return refusal;
    batch = [];
    last = commit(change);
    // Whoever waits for it next is told; until then it is nobody's fault.
    last.catch(() => undefined);
    return undefined;
  };
  /** Adds things that go into one revision together; gives whether it is full. */
  const put = (group: Group): boolean => {
    for (const line of group) if (index.stateAt(line.line) !== "stands") batch.push(line);
    return batch.length >= thingsARevision;
  };

  for await (const some of options.lines)
    for (const text of some) {
      number++;
      const line = read(text, number);
      for (const group of line === undefined ? [] : pool.take(line)) {
        const refusal = put(group) ? await keep() : undefined;
        if (refusal !== undefined) return { written, refusal };
      }
    }
  const refusal = (await keep()) ?? (await last);
  return refusal === undefined ? { written } : { written, refusal };
}

/** The edits of a revision, frozen throughout, so that no store need copy them. */
async function changeOf(
  store: ImportTarget,
  index: ImportIndex,
  batch: readonly ImportLine[],
): Promise<Change> {
  const replacing = batch.filter(({ line }) => index.stateAt(line) === "other");
  const standing = await readStanding(store, replacing);
  return keepFrozen(
    batch.map(({ kind, thing }): Edit => {
      const after = isInOrder(thing) ? deepFreeze(thing) : frozenCopy(thing);
      const before = standing.get(thing.id);
      const edit = before === undefined ? { after, kind } : { after, before: frozenCopy(before), kind };
      return Object.freeze(edit) as Edit;
    }),
  );
}
