import type { Written } from "../domain/written.ts";
import type { Log } from "../ports/log.ts";
import type { Store } from "../ports/store.ts";

/** Is told of each write, in order. The next one waits for it, and so do those who wait for this one. */
export type Listener = (written: Written) => Promise<void>;

export interface FollowOptions {
  /** The number of the write up to which everything is known already. */
  readonly after: number;
  /** Milliseconds between two looks at the store, where nobody nudges. */
  readonly every: number;
  readonly log: Log;
}

export interface Follower {
  /** The number of the last write that every listener was told of. */
  readonly sequence: number;
  /** Looks at once: for a process that has just written itself. */
  nudge(): void;
  /** Waits until that write was handed on; false where that takes longer than `patience` milliseconds. */
  reach(sequence: number, patience: number): Promise<boolean>;
  /** Ends after the write that is just handed on; nobody is told of anything afterwards. */
  stop(): Promise<void>;
}

/** Writes that are read at once. */
const AT_ONCE = 200;
/** How long to wait at most before the same is tried again, in milliseconds. */
const LONGEST_PAUSE = 5_000;

/**
 * Hands each write of a store, whoever made it, to every listener in turn: one after the other in the order of their
 * numbers, none left out, none twice. A listener that throws is told of the same write again after a while, and the
 * listeners before it are not; meanwhile nothing else is handed on. So is it where the store cannot be read, or has a gap.
 */
export function followWrites(
  store: Pick<Store, "writesAfter">,
  listeners: readonly Listener[],
  { after, every, log }: FollowOptions,
): Follower {
  let sequence = after;
  /** How many listeners have been told of the next write. */
  let told = 0;
  let failures = 0;
  let isNudged = false;
  let isStopped = false;
  let endPause: (evenAfterFailure: boolean) => void = () => {};
  const waiting = new Set<() => void>();

  /** Hands on what there is; says whether there may be more. */
  const look = async (): Promise<boolean> => {
    const writes = await store.writesAfter(sequence, AT_ONCE);
    for (const written of writes) {
      if (written.sequence !== sequence + 1) throw new Error(`Write ${sequence + 1} cannot be read yet`);
      for (; told < listeners.length; told++) await listeners[told]?.(written);
      told = 0;
      sequence = written.sequence;
      for (const check of waiting) check();
      if (isStopped) return false;
    }
    return writes.length === AT_ONCE;
  };

  const pause = (): Promise<void> =>
    new Promise((resolve) => {
      const end = (): void => {
        clearTimeout(timer);
        resolve();
      };
      const timer = setTimeout(end, failures === 0 ? every : pauseAfter(failures, every));
      endPause = (evenAfterFailure) => {
        if (failures === 0 || evenAfterFailure) end();
      };
    });

  const run = async (): Promise<void> => {
    while (!isStopped) {
      isNudged = false;
      let mayBeMore = false;
      try {
        mayBeMore = await look();
        failures = 0;
      } catch (failure) {
        failures++;
        const error = String(failure instanceof Error ? failure.stack : failure);
        log({ level: "error", event: "write not handed on", after: sequence, tries: failures, error });
      }
      const goesOn = mayBeMore || (isNudged && failures === 0);
      if (!goesOn && !isStopped) await pause();
    }
  };
  const running = run();

  const nudge = (): void => {
    isNudged = true;
    endPause(false);
  };
  return {
    get sequence() {
      return sequence;
    },
    nudge,
    reach: (wanted, patience) => {
      if (sequence >= wanted) return Promise.resolve(true);
      nudge();
      return new Promise((resolve) => {
        const check = (): void => {
          if (sequence < wanted && !isStopped) return;
          clearTimeout(timer);
          waiting.delete(check);
          resolve(sequence >= wanted);
        };
        const timer = setTimeout(() => {
          waiting.delete(check);
          resolve(false);
        }, patience);
        waiting.add(check);
        check();
      });
    },
    stop: async () => {
      isStopped = true;
      endPause(true);
      await running;
      for (const check of waiting) check();
    },
  };
}

/** Longer from one failure to the next. */
const pauseAfter = (failures: number, every: number): number =>
  Math.min(every * 2 ** Math.min(failures - 1, 20), Math.max(LONGEST_PAUSE, every));
