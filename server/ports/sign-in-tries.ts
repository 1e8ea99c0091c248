/** Failed tries to sign in, by address. Kept in this process alone, and lost with it. */
export interface SignInTries {
  /** Nothing is counted without an address: behind a proxy all have that of the proxy. */
  readonly secondsToWait: (address: string | undefined, now: string) => number;
  readonly failed: (address: string | undefined, now: string) => void;
  /** Whether a failure that belongs to nobody is to be noted; true once a minute. */
  readonly isToBeNoted: (now: string) => boolean;
}
