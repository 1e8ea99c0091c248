import type { Change } from "../domain/change.ts";
import type { ExaminationId } from "../domain/ids.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Written } from "../domain/written.ts";
import type { Log } from "../ports/log.ts";
import { nextTurn } from "../ports/next-turn.ts";
import type { Standings } from "../ports/standings.ts";
import type { Store } from "../ports/store.ts";
import { StoreFailed } from "../ports/store-failed.ts";
import { verdictsOn } from "../reasoning/verdicts-on.ts";
import { openImpactIndex } from "./impact-index.ts";
import { openQueue } from "./queue.ts";
import { type Stood, stand } from "./stand.ts";
import { claimsAround, touchOf } from "./touch-of.ts";

export interface OpenStandings extends Standings {
  /** To be told of every write in order. */
  readonly follow: (written: Written) => Promise<void>;
  /** Resolves when nothing waits to be examined again. */
  readonly settled: () => Promise<void>;
  readonly stop: () => Promise<void>;
  /** For whoever measures: examined anew, spared by the digest, the longest piece of work in milliseconds, the index. */
  readonly measures: () => {
    readonly examined: number;
    readonly cutOff: number;
    readonly longest: number;
    readonly index: ReturnType<ReturnType<typeof openImpactIndex>["size"]>;
  };
}

export interface StandingsOptions {
  readonly store: Store;
  readonly log: Log;
  /** Milliseconds to rest after so many of work; as long as that unless said otherwise, so that half of the time is left to others. */
  readonly restAfter?: (worked: number) => number;
  /** Counts the milliseconds of work; those of the clock unless said otherwise. */
  readonly now?: () => number;
  /** Milliseconds to wait after a failure of the store. */
  readonly pause?: number;
  /** Examinations followed at most; those changed least lately are left out. */
  readonly most?: number;
}

const MOST = 20_000;
const PAUSE = 2_000;
/** Examinations listed at once at the start. */
const AT_ONCE = 20;

/**
 * Examines all stored examinations in the background, and again whenever a change can have touched them, those looked at
 * most first. Everything is in memory and made anew at the next start; nobody waits for it.
 */
export function openStandings({ store, log, ...options }: StandingsOptions): OpenStandings {
  const {
    restAfter = (worked: number) => worked,
    most = MOST,
    pause = PAUSE,
    now = () => performance.now(),
  } = options;
  const kept = new Map<ExaminationId, Stood>();
  const index = openImpactIndex();
  const queue = openQueue<ExaminationId>();
  const views = new Map<ExaminationId, number>();
  let handled: RevisionNumber = 0;
  let [left, examined, cutOff, longest] = [0, 0, 0, 0];
  let isStopped = false;
  let isBeginning = true;
  let wake: () => void = () => {};
  const whenSettled = new Set<() => void>();
  /** Those at which the engine failed: tried again after the next change. */
  const lost = new Set<ExaminationId>();

  const isKnown = (id: ExaminationId) => kept.has(id) || queue.has(id);
  const enqueue = (id: ExaminationId): void => {
    if (!isKnown(id) && kept.size + queue.size() >= most) left++;
    else queue.add(id, views.get(id) ?? 0);
    wake();
  };
  const forget = (id: ExaminationId): void => {
    kept.delete(id);
    index.drop(id);
    queue.remove(id);
    views.delete(id);
  };
  const begin = async (): Promise<void> => {
    isBeginning = true;
    for (const id of [...kept.keys(), ...queue.all()]) forget(id);
    lost.clear();
    index.clear();
    left = 0;
    handled = (await store.newestRevision())?.number ?? 0;
    let after: string | undefined;
    do {
      const page = await store.listExaminations({ first: AT_ONCE, ...(after ? { after } : {}) });
      for (const { id } of page.rows) enqueue(id);
      after = page.hasMore ? page.cursors.at(-1) : undefined;
      await rest();
    } while (after !== undefined);
    isBeginning = false;
    wake();
  };

  let began = now();
  const sleep = (time: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, time));
  /** Ends a piece of work: what was asked for meanwhile comes first. */
  const rest = async (): Promise<void> => {
    const worked = now() - began;
    longest = Math.max(longest, worked);
    const time = restAfter(worked);
    await (time > 0 ? sleep(time) : nextTurn());
    began = now();
  };

  const again = async (id: ExaminationId): Promise<void> => {
    const ticket = queue.ticketOf(id);
    const examination = await store.examination(id);
    if (examination === undefined || examination.deleted) return forget(id);
    const { stood, reads, isCutOff } = await stand({ store, verdictsOn, rest }, examination, kept.get(id));
    if (!isKnown(id)) return;
    if (isCutOff) cutOff++;
    else examined++;
    index.put(id, reads);
    kept.set(id, stood);
    // A change that was handled meanwhile was held against what had been read before.
    if (handled <= stood.revision && queue.ticketOf(id) === ticket) queue.remove(id);
  };

  const run = async (): Promise<void> => {
    while (!isStopped) {
      if (isBeginning) await begin().catch(failed);
      const id = queue.first();
      if (id === undefined && !isBeginning && !isStopped) {
        for (const settle of whenSettled) settle();
        whenSettled.clear();
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      if (id === undefined || isStopped) continue;
      began = now();
      await again(id).catch((error: unknown) => failed(error, id));
      await rest();
    }
  };
  const failed = async (error: unknown, id?: ExaminationId): Promise<void> => {
    log({ level: "error", event: "not examined again", examination: id, error: String(error) });
    if (id !== undefined && !(error instanceof StoreFailed)) {
      forget(id);
      lost.add(id);
      return;
    }
    if (id !== undefined) queue.postpone(id);
    await sleep(isStopped ? 0 : pause);
  };
  const running = run();

  return {
    find: (id) => {
      const stood = kept.get(id);
      return stood && { ...stood, upToDate: !queue.has(id), knownTo: Math.max(handled, stood.revision) };
    },
    looked: (id) => {
      if (!isKnown(id)) return;
      views.set(id, (views.get(id) ?? 0) + 1);
      queue.favour(id, views.get(id) ?? 0);
    },
    touchedBy: async (change: Change) => {
      const touch = await touchOf(change, async (ids) => [...(await store.claims(ids)).values()]);
      return new Set([...index.touchedBy(touch), ...queue.all(), ...lost]);
    },
    stored: (id) => store.examination(id),
    progress: () => ({ known: new Set([...kept.keys(), ...queue.all()]).size, waiting: queue.size(), left }),
    follow: async ({ revision, examination, restored }) => {
      if (restored) isBeginning = true;
      // One write can hold both.
      if (!restored && revision !== undefined) {
        const touch = await touchOf((await store.changeAt(revision)) ?? [], claimsAround(store, revision));
        for (const id of [...index.touchedBy(touch), ...lost]) enqueue(id);
        lost.clear();
        handled = Math.max(handled, revision);
      }
      if (examination !== undefined) {
        const newest = await store.examination(examination.id);
        if (newest === undefined || newest.deleted) forget(examination.id);
        else enqueue(examination.id);
      }
      wake();
    },
    settled: () =>
      new Promise((resolve) => {
        whenSettled.add(resolve);
        wake();
      }),
    stop: async () => {
      isStopped = true;
      wake();
      await running;
    },
    measures: () => ({ examined, cutOff, longest, index: index.size() }),
  };
}
