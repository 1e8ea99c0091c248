import { isProblem } from "../domain/problem.ts";
import type { Count, CountsUnderWay } from "../ports/counts-under-way.ts";
import type { Log } from "../ports/log.ts";
import type { Notes } from "../ports/notes.ts";

export interface CountPace {
  /** Milliseconds between two notes of one count; what ends before them leaves none. */
  readonly beat: number;
  /** Milliseconds for which a count holds that is told no more. */
  readonly life: number;
}
const PACE: CountPace = { beat: 500, life: 15_000 };

interface Own {
  count: Count | undefined;
  notedAt: number;
  hasNote: boolean;
  /** The note that is being written. */
  writing: Promise<void> | undefined;
}

const aboutCount = (name: string): string => `count ${name}`;

/**
 * Counts of this process, and by notes of the store (S71) those of others over it. What cannot be written or read is logged, and nobody
 * waits for it: the count of another process may come late or not at all.
 */
export function openCounts(
  notes: Notes,
  {
    by,
    log,
    pace: { beat, life } = PACE,
  }: { readonly by: string; readonly log: Log; readonly pace?: CountPace },
): CountsUnderWay {
  const underWay = new Map<string, Own>();
  const failed = (failure: unknown): void =>
    log({ level: "warn", event: "count not shared", error: String(failure) });
  const leave = async (name: string, body?: Count): Promise<void> => {
    const about = aboutCount(name);
    const left = await notes.leaveNotes(by, [body === undefined ? { about } : { about, body }], life);
    if (isProblem(left)) failed(left.message);
  };

  const note = (name: string, own: Own): void => {
    const at = performance.now();
    if (own.writing !== undefined || at - own.notedAt < beat) return;
    own.notedAt = at;
    own.hasNote = true;
    own.writing = leave(name, own.count)
      .catch(failed)
      .finally(() => {
        own.writing = undefined;
      });
  };
  const takeBack = async (name: string, own: Own): Promise<void> => {
    await own.writing;
    // One of the same name that was begun meanwhile says its own.
    if (!underWay.has(name)) await leave(name).catch(failed);
  };

  return {
    begin: (name) => {
      const before = underWay.get(name);
      const own: Own = {
        ...{ count: undefined, notedAt: performance.now(), writing: undefined },
        // What the one before has left is for the last to take back.
        hasNote: before?.hasNote ?? false,
      };
      underWay.set(name, own);
      return {
        tell: (count) => {
          own.count = count;
          if (underWay.get(name) === own) note(name, own);
        },
        end: () => {
          if (underWay.get(name) === own) underWay.delete(name);
          if (own.hasNote) void takeBack(name, own);
        },
      };
    },
    find: async (name) => {
      const own = underWay.get(name);
      if (own !== undefined) return own.count;
      const found = await notes.notesAbout([aboutCount(name)]).catch((failure: unknown) => {
        failed(failure);
        return [];
      });
      // Of several the one begun last is as a rule the one that is least far.
      return found
        .filter((each) => each.by !== by)
        .flatMap(({ body }) => (isCount(body) ? [body] : []))
        .sort((a, b) => a.done - b.done)[0];
    },
  };
}

function isCount(value: unknown): value is Count {
  if (typeof value !== "object" || value === null) return false;
  const { done, of, found } = value as Partial<Record<keyof Count, unknown>>;
  return [done, of, found].every(Number.isSafeInteger);
}
