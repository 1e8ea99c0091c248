import type { Role } from "../../domain/people/caller.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Provider } from "../../ports/provider.ts";
import type { Secrets } from "../../ports/secrets.ts";
import type { SignInTries } from "../../ports/sign-in-tries.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";

/** What the use cases about people stand on. */
export interface PeoplePorts extends Acting {
  readonly store: Store;
  readonly secrets: Secrets;
  readonly newSuffix: NewSuffix;
  readonly tries: SignInTries;
  /** Id of the session that whoever asks is known by. */
  readonly here?: string;
  /** Where else one can sign in, if anywhere. */
  readonly provider?: Provider;
  /** The addresses that browsers reach the house under, besides this machine's own. */
  readonly origins?: readonly string[];
  /** The least role that has to sign in in two steps; without it nobody has to. */
  readonly secondStepFrom?: Role;
}

/** A time so many milliseconds later. */
export const later = (now: string, milliseconds: number): string =>
  new Date(Date.parse(now) + milliseconds).toISOString();
