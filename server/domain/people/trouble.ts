/** How often signing in failed, one time after the other. */
export interface Trouble {
  readonly failures: number;
  /** ISO 8601 time in UTC of the last. */
  readonly at: string;
}
export const TROUBLE_CARD = "sign-in-trouble";
/** Failures that cost no waiting. */
const FREE = 5;
/** Seconds that one waits at most; nobody can keep a person out for longer by failing in her name. */
const LONGEST_WAIT = 60;
/** After an hour without one, failures are forgotten. */
const FORGOTTEN = 3600;

/** Seconds to wait before the next try: none for five failures, then 1, 2, 4 … up to a minute. */
export function secondsToWait(trouble: Trouble | undefined, now: string): number {
  if (trouble === undefined || trouble.failures < FREE) return 0;
  const passed = (Date.parse(now) - Date.parse(trouble.at)) / 1000;
  return Math.max(0, Math.ceil(Math.min(LONGEST_WAIT, 2 ** (trouble.failures - FREE)) - passed));
}

/** Whether so long ago that nothing follows from it any more. */
export const isForgotten = (trouble: Trouble, now: string): boolean =>
  Date.parse(now) - Date.parse(trouble.at) >= FORGOTTEN * 1000;

/** After one more failure. */
export const afterFailure = (before: Trouble | undefined, at: string): Trouble => ({
  failures: before !== undefined && !isForgotten(before, at) ? before.failures + 1 : 1,
  at,
});
