import type { Neighbourhood, NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Written } from "../../domain/written.ts";
import type { BoundOf, DatingReader } from "../../ports/dating-reader.ts";
import type { Log } from "../../ports/log.ts";
import type { Store } from "../../ports/store.ts";
import { buildArrays, type Progress } from "./build-arrays.ts";
import { type Difference, findDifference } from "./find-difference.ts";
import { patchArrays } from "./patch-arrays.ts";
import { type CacheLimits, type NeighbourhoodReader, neighbourhoodReader } from "./read-neighbourhood.ts";
import { byteLengthOf, type WalkArrays } from "./walk-arrays.ts";
import { walkEdits } from "./walk-edits.ts";

/** How the mirror stands, for whoever watches the program. */
export interface MirrorStatus {
  /** Whether asks of the newest revision are answered from it. */
  readonly isBuilt: boolean;
  /** While it is being built for the first time: how far that is. */
  readonly progress?: Progress;
  readonly revision: RevisionNumber;
  readonly terms: number;
  readonly claims: number;
  readonly bytes: number;
  /** How often it was built. */
  readonly builds: number;
  /** Asks that were compared with the store, and how many were answered otherwise. */
  readonly checks: number;
  readonly differences: number;
  /** How often it could not be patched or read, and was given up and built anew. */
  readonly failures: number;
}

/** A copy in memory of what the newest revision is walked over, kept up with the store. */
export interface Mirror extends DatingReader {
  readonly status: () => MirrorStatus;
  /** Resolves when it is built; tries again where the store fails. */
  readonly built: Promise<void>;
  /** What an ask of the revision that the mirror is at, or of none, is answered. Undefined where the store has to be asked. */
  neighbourhood(ask: NeighbourhoodAsk): Promise<Neighbourhood | undefined>;
  /** Resolves when no ask is answered from an earlier revision any more. Never rejects. */
  reach(revision: RevisionNumber): Promise<void>;
  /** The same for a write that was handed on by whoever follows the store. */
  follow(written: Pick<Written, "revision" | "restored">): Promise<void>;
  /** Compares so many asks at random with the store; after a difference it is built anew. */
  check(asks: number): Promise<Difference | undefined>;
  /** Builds it anew from what the store holds, answering from what there is meanwhile unless told otherwise. */
  rebuild(how?: { readonly atOnceFromStore: boolean }): Promise<void>;
  /** Resolves when nothing is read of the store any more. */
  stop(): Promise<void>;
}

export interface MirrorOptions {
  readonly log: Log;
  readonly caches: CacheLimits;
  /** Entries that may be changed before the arrays are built anew; more in a larger graph. */
  readonly mostPatched: number;
  /** At least 0 and below 1, for the asks that are compared. */
  readonly random: () => number;
  /** Milliseconds before a building that failed is tried again. */
  readonly pause: number;
  /** Milliseconds between two checks of some asks at random; 0 for none. */
  readonly checkEvery: number;
  /** How many asks are compared at each. */
  readonly checkedAsks: number;
  /** Reads the years of a claim; without it no datings are answered. */
  readonly boundOf: BoundOf;
}

const DEFAULTS: Omit<MirrorOptions, "log" | "boundOf"> = {
  caches: { claims: 200_000, terms: 200_000 },
  mostPatched: 20_000,
  random: Math.random,
  pause: 1000,
  checkEvery: 60_000,
  checkedAsks: 4,
};

/** Milliseconds between two lines about how far a building is, and after which a first one is told of. */
const SAID_EVERY = 5_000;
const WORTH_SAYING = 1_000;

/** What is built: arrays with their reader. */
interface Built {
  readonly arrays: WalkArrays;
  readonly reader: NeighbourhoodReader;
}

class Stopped extends Error {}

/** Opens a mirror of a store and begins to build it. */
export function openMirror(
  store: Store,
  options: Pick<MirrorOptions, "log"> & Partial<MirrorOptions>,
): Mirror {
  const { log, caches, mostPatched, random, pause, checkEvery, checkedAsks, boundOf } = {
    ...DEFAULTS,
    ...options,
  };
  let standing: Built | undefined;
  let progress: Progress | undefined;
  /** The newest revision that was heard of. */
  let heardOf: RevisionNumber = 0;
  let building: Promise<void> | undefined;
  /** What the building under way is to be followed by. */
  let isStale = false;
  let isStopped = false;
  let wake: () => void = () => {};
  let timer: ReturnType<typeof setInterval> | undefined;
  const counts = { builds: 0, checks: 0, differences: 0, failures: 0 };
  let turn: Promise<unknown> = Promise.resolve();

  /** One after the other: changes of the arrays. */
  const inTurn = <Answer>(what: () => Promise<Answer>): Promise<Answer> => {
    const done = turn.then(what);
    turn = done.catch(() => undefined);
    return done;
  };
  const patch = async ({ arrays, reader }: Built, to: RevisionNumber): Promise<void> => {
    while (arrays.revision < to) {
      const change = await store.changeAt(arrays.revision + 1);
      if (change === undefined) throw new Error(`The store holds no revision ${arrays.revision + 1}`);
      const edits = walkEdits(change);
      patchArrays(arrays, arrays.revision + 1, edits);
      reader.forget(edits);
    }
  };
  const isMuchPatched = ({ patched, claims }: WalkArrays): boolean =>
    patched > mostPatched + claims.sorted / 10;

  const buildOnce = async (): Promise<void> => {
    const began = performance.now();
    isStale = false;
    const revision = (await store.newestRevision())?.number ?? 0;
    let said = began;
    const arrays = await buildArrays(store.walkBlocks(revision), revision, {
      onProgress: (made) => {
        if (isStopped) throw new Stopped();
        if (standing === undefined) progress = made;
        if (performance.now() - said < SAID_EVERY) return;
        said = performance.now();
        log({ level: "info", event: "mirror being built", revision, ...made });
      },
    });
    const next: Built = { arrays, reader: neighbourhoodReader(arrays, store, caches, boundOf) };
    const isUsed = await inTurn(async () => {
      await patch(next, Math.max(heardOf, standing?.arrays.revision ?? 0));
      if (isStale || isStopped) return false;
      standing = next;
      progress = undefined;
      return true;
    });
    if (!isUsed) return;
    counts.builds++;
    if (counts.builds === 1 && performance.now() - began < WORTH_SAYING) return;
    log({
      level: "info",
      event: "mirror built",
      ...{ revision: arrays.revision, terms: arrays.terms.size, claims: arrays.claims.size },
      megabytes: Math.round(byteLengthOf(arrays) / 1e6),
      milliseconds: Math.round(performance.now() - began),
    });
  };
  const build = async (): Promise<void> => {
    for (;;)
      try {
        do await buildOnce();
        while (isStale && !isStopped);
        return;
      } catch (failure) {
        if (isStopped) return;
        log({ level: "warn", event: "mirror not built", error: String(failure) });
        await new Promise<void>((resolve) => {
          wake = resolve;
          setTimeout(resolve, pause).unref();
        });
        if (isStopped) return;
      }
  };
  const rebuild: Mirror["rebuild"] = ({ atOnceFromStore } = { atOnceFromStore: false }) => {
    if (atOnceFromStore) {
      standing = undefined;
      isStale = true;
    }
    if (isStopped) return Promise.resolve();
    building ??= build().finally(() => {
      building = undefined;
    });
    return building;
  };
  const giveUp = (event: string, failure: unknown): void => {
    if (isStopped) return;
    counts.failures++;
    log({ level: "error", event, error: String(failure) });
    void rebuild({ atOnceFromStore: true });
  };
  const reach: Mirror["reach"] = (revision) => {
    heardOf = Math.max(heardOf, revision);
    return inTurn(async () => {
      const now = standing;
      if (now === undefined || isStopped) return;
      try {
        await patch(now, revision);
        if (isMuchPatched(now.arrays)) void rebuild();
      } catch (failure) {
        giveUp("mirror not patched", failure);
      }
    });
  };
  /** What is read off it, unless it is not built or does not hold together. */
  const answer = async <Answer>(
    read: (built: Built) => Answer | Promise<Answer>,
  ): Promise<Answer | undefined> => {
    const now = standing;
    if (now === undefined) return undefined;
    try {
      return await read(now);
    } catch (failure) {
      if (standing === now) giveUp("mirror not read", failure);
      return undefined;
    }
  };

  const mirror: Mirror = {
    status: () => {
      const arrays = standing?.arrays;
      return {
        isBuilt: arrays !== undefined,
        ...(progress === undefined ? {} : { progress }),
        revision: arrays?.revision ?? 0,
        terms: arrays?.terms.size ?? 0,
        claims: arrays?.claims.size ?? 0,
        bytes: arrays === undefined ? 0 : byteLengthOf(arrays),
        ...counts,
      };
    },
    built: rebuild(),
    neighbourhood: async ({ at, ...ask }) => {
      if (at !== undefined && at !== standing?.arrays.revision) return undefined;
      const found = await answer(({ reader }) => reader.read(ask));
      return at === undefined || found?.revision === at ? found : undefined;
    },
    datings: (ask) => answer(({ reader }) => reader.datings(ask)),
    reach,
    follow: async ({ revision, restored }) => {
      if (restored) void rebuild({ atOnceFromStore: true });
      if (revision !== undefined) await reach(revision);
    },
    check: async (asks) => {
      const now = standing;
      if (now === undefined) return undefined;
      const found = await findDifference(mirror, store, now.arrays, { asks, random });
      counts.checks += asks;
      if (found === undefined || standing !== now) return undefined;
      counts.differences++;
      log({ level: "error", event: "mirror differs from the store", revision: found.revision, in: found.in });
      void rebuild({ atOnceFromStore: true });
      return found;
    },
    rebuild,
    stop: async () => {
      isStopped = true;
      clearInterval(timer);
      wake();
      await building;
      await turn;
      standing = undefined;
    },
  };
  if (checkEvery > 0)
    timer = setInterval(() => {
      // A store that does not answer is told of by others.
      mirror.check(checkedAsks).catch(() => undefined);
    }, checkEvery).unref();
  return mirror;
}
