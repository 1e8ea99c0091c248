import { afterFailure, secondsToWait, type Trouble } from "../domain/people/trouble.ts";
import { limitRuns } from "../ports/limit-runs.ts";
import type { SignInTries } from "../ports/sign-in-tries.ts";

/** Addresses, and names, that are kept in mind; beyond that the ones that failed longest ago are forgotten. */
const MOST = 10_000;
/** Several persons can share an address: every so many failures count as one. */
const SHARED_BY = 4;
/** Tries of one person that wait for the one before. */
const WAITING = 20;
/** Milliseconds in which a store has written. */
const SETTLED = 100;

/** Counts failures in memory. */
export function countTries(): SignInTries {
  const addresses = openCount(SHARED_BY);
  const names = openCount(1);
  const lines = new Map<string, { readonly inTurn: ReturnType<typeof limitRuns>; asked: number }>();
  let notedAt = Number.NEGATIVE_INFINITY;
  return {
    secondsToWait: (address, now) => (address === undefined ? 0 : addresses.secondsToWait(address, now)),
    failed: (address, now) => {
      if (address !== undefined) addresses.failed(address, now);
    },
    secondsToWaitAs: names.secondsToWait,
    failedAs: names.failed,
    isToBeNoted: (now) => {
      if (Date.parse(now) - notedAt < 60_000) return false;
      notedAt = Date.parse(now);
      return true;
    },
    inLine: async (whose, look) => {
      const line = lines.get(whose) ?? { inTurn: limitRuns(1, WAITING), asked: 0 };
      lines.set(whose, line);
      line.asked++;
      try {
        return await line.inTurn(look);
      } finally {
        line.asked--;
        if (line.asked === 0) lines.delete(whose);
      }
    },
    settle: () => new Promise((resolve) => setTimeout(resolve, SETTLED)),
  };
}

/** Failures by some text, of which so many count as one. */
function openCount(sharedBy: number) {
  const troubles = new Map<string, Trouble>();
  return {
    secondsToWait: (key: string, now: string): number => {
      const trouble = troubles.get(key);
      return secondsToWait(trouble && { ...trouble, failures: Math.floor(trouble.failures / sharedBy) }, now);
    },
    failed: (key: string, now: string): void => {
      const next = afterFailure(troubles.get(key), now);
      troubles.delete(key);
      troubles.set(key, next);
      const [oldest] = troubles.keys();
      if (troubles.size > MOST && oldest !== undefined) troubles.delete(oldest);
    },
  };
}
