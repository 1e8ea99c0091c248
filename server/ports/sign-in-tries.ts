/** Failed tries to sign in, by address and by names that there are not. Kept in this process alone, and lost with it. */
export interface SignInTries {
  /** Nothing is counted without an address: behind a proxy all have that of the proxy. */
  readonly secondsToWait: (address: string | undefined, now: string) => number;
  readonly failed: (address: string | undefined, now: string) => void;
  /** The same for a name that is nobody's, as long as for one that is somebody's. */
  readonly secondsToWaitAs: (name: string, now: string) => number;
  readonly failedAs: (name: string, now: string) => void;
  /** Whether a failure that belongs to nobody is to be noted; true once a minute. */
  readonly isToBeNoted: (now: string) => boolean;
  /**
   * Looks at what somebody shows after what was shown for the same person (or name) before, so that many tries at once are no more than
   * one after the other; `busy` where too many wait.
   */
  readonly inLine: <Answer>(whose: string, look: () => Promise<Answer>) => Promise<Answer | "busy">;
  /** A while in which a failure is written: who waits it out does not tell by the time whether there was one to write. */
  readonly settle: () => Promise<void>;
}
