import type { CardWrite } from "../../domain/card.ts";
import type { Role } from "../../domain/people/caller.ts";
import { SESSION_CARD } from "../../domain/people/session.ts";
import { TOKEN_CARD } from "../../domain/people/token.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Provider } from "../../ports/provider.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Secrets } from "../../ports/secrets.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";

/** What the use cases about people stand on. */
export interface PeoplePorts extends Acting {
  readonly store: Store;
  readonly secrets: Secrets;
  readonly newSuffix: NewSuffix;
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

/** What ends the sessions of a person, and with `tokens` those too; the session of `but` goes on. */
export async function endAllOf(
  { store }: Pick<PeoplePorts, "store">,
  person: string,
  { tokens, but }: { readonly tokens: boolean; readonly but?: string },
): Promise<readonly CardWrite[]> {
  const kinds = tokens ? [SESSION_CARD, TOKEN_CARD] : [SESSION_CARD];
  const cards = await Promise.all(
    kinds.map((kind) =>
      readAll((page) => store.listCards({ kind, key: { name: "person", value: person } }, page)),
    ),
  );
  return cards
    .flat()
    .filter(({ id }) => id !== but)
    .map(({ kind, id, version }) => ({ kind, id, expectedVersion: version }));
}
