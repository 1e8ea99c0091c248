import type { Change } from "../../domain/change.ts";
import type { Database } from "./database.ts";
import type { NeighbourhoodCache } from "./neighbourhood-cache.ts";
import { newestWrite, writesAfter } from "./writes.ts";

export interface Others {
  /** Forgets what other programs have changed since. Inside a read, before anything else. */
  follow(): void;
  /** Says that this program has made that write, and forgotten what it changed. */
  wrote(sequence: number): void;
}

/** Writes that are looked through one by one; after more, all is forgotten. */
const MOST_WRITES = 100;
/** Characters of a change that is looked through. */
const LONGEST_CHANGE = 200_000;

/** Keeps the cache of a connection true while others write to the file. Rows of claims never change; those of terms end. */
export function followOthers(database: Database, cache: NeighbourhoodCache): Others {
  let dataVersion = 0;
  /** The number of the newest write that the cache knows of; it is empty until there is one. */
  let known: number | undefined;
  /** The changes of others, if they can be told one by one. */
  const readChanges = (): readonly Change[] | undefined => {
    if (known === undefined) return [];
    const writes = writesAfter(database, known, MOST_WRITES + 1);
    // None where others only left notes, which nothing is kept of.
    if (writes.length > MOST_WRITES) return undefined;
    const changes: Change[] = [];
    for (const { revision, restored } of writes) {
      if (restored) return undefined;
      if (revision === undefined) continue;
      const row = database.get<{ change: string | null }>(
        "SELECT iif(length(change) <= :longest AND json_valid(change), change, NULL) AS change FROM revision WHERE number = :revision",
        { revision, longest: LONGEST_CHANGE },
      );
      if (!row?.change) return undefined;
      changes.push(JSON.parse(row.change) as Change);
    }
    return changes;
  };
  return {
    follow: () => {
      const { data_version: now = 0 } = database.get<{ data_version: number }>("PRAGMA data_version") ?? {};
      if (now === dataVersion) return;
      dataVersion = now;
      const changes = readChanges();
      if (changes === undefined) cache.clear();
      for (const { kind, before } of changes?.flat() ?? [])
        if (kind === "term" && before) cache.forgetTerm(before.id);
      known = newestWrite(database);
    },
    wrote: (sequence) => {
      if (known !== undefined && sequence === known + 1) known = sequence;
    },
  };
}
