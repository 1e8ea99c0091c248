import type { Problem } from "../domain/problem.ts";

/** What one way to another provider and back is bound to. Each is random and serves for this one. */
export interface Way {
  /** Where the browser comes back to. */
  readonly redirect: string;
  readonly state: string;
  readonly nonce: string;
  /** Of which the provider is told the hash first. */
  readonly verifier: string;
}

/** Whom another provider says that it has signed in. */
export interface Identity {
  readonly issuer: string;
  /** Never given to anybody else by this issuer. */
  readonly subject: string;
  /** The provider says that it asked for more than a password. */
  readonly isStrong: boolean;
}

/** Another place that people sign in at (OpenID Connect, code flow with PKCE). */
export interface Provider {
  /** As people call it. */
  readonly name: string;
  /** The address that the browser is sent to; `TRY_LATER` where the provider cannot be reached. */
  readonly begin: (way: Way) => Promise<string | Problem>;
  /**
   * Trades the code in the address that the browser came back to. `SIGN_IN_REFUSED` where anything of it does not belong to the way,
   * or what the provider signed is not for this house, of another issuer, too old or signed by another key.
   */
  readonly finish: (way: Way, cameBackTo: string) => Promise<Identity | Problem>;
}
