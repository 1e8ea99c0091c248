import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { type Session, sessionWrite } from "../../domain/people/session.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import type { Refusal } from "../refusal.ts";
import type { PeoplePorts } from "./people-ports.ts";

/** Somebody who signed in. `secret` is for the browser alone. */
export interface SignedIn {
  readonly person: string;
  readonly secret: string;
}
type Ports = Pick<PeoplePorts, "store" | "secrets" | "now">;

/**
 * Signs somebody in with a new session. `ended` is how often all of hers had been ended before what she shows was looked at: where
 * it happened again since then, nobody gets in.
 */
export async function openSession(
  { store, secrets, now }: Ports,
  { person, ended, steps }: Required<Pick<Session, "person" | "ended" | "steps">>,
  { cards, did }: { readonly cards: readonly CardWrite[]; readonly did: string },
): Promise<SignedIn | Refusal> {
  const at = now();
  const secret = secrets.newSecret();
  const session = sessionWrite(secrets.hash(secret), 0, { person, madeAt: at, seenAt: at, steps, ended });
  const written = await store.writeCards({ cards: [session, ...cards], deed: { by: person, at, did } });
  if (isProblem(written)) return { refused: [written] };
  const [entry, card] = await Promise.all([store.card(ENTRY_CARD, person), store.card(PERSON_CARD, person)]);
  const isIn = entryOf(entry).ended === ended && (card && personOf(card))?.state === "active";
  return isIn ? { person, secret } : { refused: [endedMeanwhile] };
}

const endedMeanwhile = problem(
  "SIGN_IN_REFUSED",
  "The password, or what else lets you in, was changed while you signed in. Sign in again.",
);
