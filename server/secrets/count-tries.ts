import { afterFailure, secondsToWait, type Trouble } from "../domain/people/trouble.ts";
import type { SignInTries } from "../ports/sign-in-tries.ts";

/** Addresses that are kept in mind; beyond that the ones that failed longest ago are forgotten. */
const MOST = 10_000;
/** Several persons can share an address: every so many failures count as one. */
const SHARED_BY = 4;

/** Counts failures of each address in memory. */
export function countTries(): SignInTries {
  const troubles = new Map<string, Trouble>();
  let notedAt = Number.NEGATIVE_INFINITY;
  return {
    secondsToWait: (address, now) => {
      const trouble = address === undefined ? undefined : troubles.get(address);
      return secondsToWait(
        trouble && { ...trouble, failures: Math.floor(trouble.failures / SHARED_BY) },
        now,
      );
    },
    failed: (address, now) => {
      if (address === undefined) return;
      const next = afterFailure(troubles.get(address), now);
      troubles.delete(address);
      troubles.set(address, next);
      const [oldest] = troubles.keys();
      if (troubles.size > MOST && oldest !== undefined) troubles.delete(oldest);
    },
    isToBeNoted: (now) => {
      if (Date.parse(now) - notedAt < 60_000) return false;
      notedAt = Date.parse(now);
      return true;
    },
  };
}
