import { isProblem, type Problem, problem } from "../domain/problem.ts";
import type { Progress } from "../ports/progress.ts";
import type { Store } from "../ports/store.ts";
import { readThrough, type Watched, watchRecords } from "./watch-records.ts";

/** What was moved, and how it is known that nothing was lost. */
export interface Moved {
  readonly revisions: number;
  readonly edits: number;
  readonly examinations: number;
  /** SHA-256 of a dump of the old store, and of one of the new store. They are the same. */
  readonly before: string;
  readonly after: string;
  /** Writes that the old store took while it was read, and that the new one lacks. */
  readonly missed: number;
}

/**
 * Moves everything one store holds into another, which must be empty (`STORE_NOT_EMPTY`), and dumps that one again: the two
 * dumps must have the same hash. The old store is only read. Rule [S55] of docs/spec/4-store.md.
 */
export async function moveBetween(from: Store, to: Store, tell: Progress): Promise<Moved | Problem> {
  if ((await to.newestWrite()) > 0) return notEmpty();
  const of = (await from.newestRevision())?.number ?? 0;
  const copied = watchRecords(from.dump(), (seen) => tell(() => `Copying: ${wordsOf(seen, of)}`));
  const restored = await to.restore(copied.records);
  if (isProblem(restored)) return restored;
  const again = await readThrough(to.dump(), (seen) => tell(() => `Comparing: ${wordsOf(seen, of)}`));
  const { revisions, edits, versions, sha256: before } = copied.seen;
  const { sha256: after } = again;
  if (before === undefined || after === undefined || before !== after) return isOther(before, after);
  const missed = (await from.newestWrite()) - (await to.newestWrite());
  return { revisions, edits, examinations: versions.size, before, after, missed };
}

const wordsOf = ({ revisions, edits, versions }: Watched, of: number): string =>
  `revision ${revisions} of ${Math.max(of, revisions)}, ${edits} edits, ${versions.size} examinations`;

const notEmpty = (): Problem =>
  problem(
    "STORE_NOT_EMPTY",
    "The store to move to already holds a graph or examinations, and a move never mixes or replaces; name an empty folder, or another ?store=name on the server.",
  );

const isOther = (before: string | undefined, after: string | undefined): Problem =>
  problem(
    "STORE_CORRUPT",
    `The new store gives another dump (SHA-256 ${after}) than the old one (${before}); do not use it. The old store is as it was: check it with npm run verify, and move again into another place.`,
  );
