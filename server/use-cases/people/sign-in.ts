import type { CardWrite } from "../../domain/card.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { sessionWrite } from "../../domain/people/session.ts";
import { readSignInName } from "../../domain/people/sign-in-name.ts";
import { afterFailure, secondsToWait, TROUBLE_CARD, type Trouble } from "../../domain/people/trouble.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import type { SignInTries } from "../../ports/sign-in-tries.ts";
import type { Refusal } from "../refusal.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { findByName, passwordOf, passwordWrite } from "./sign-in-card.ts";

/** Somebody who signed in. `secret` is for the browser alone. */
export interface SignedIn {
  readonly person: string;
  readonly secret: string;
}

export const tryLater = (seconds: number): Problem =>
  problem("TRY_LATER", `Too many tries. Try again in ${seconds} ${seconds === 1 ? "second" : "seconds"}.`);

/** Tries that are made at the same time are all counted. */
const COUNTED_AGAIN = 30;

/**
 * Signs somebody in with a new session. A wrong name and a wrong password are refused alike, after the same work. Failures are counted
 * for each person, and for each address in this process alone.
 */
export async function signIn(
  ports: Omit<PeoplePorts, "caller"> & { readonly tries: SignInTries },
  typed: { readonly signInName: string; readonly password: string; readonly address?: string },
): Promise<SignedIn | Refusal> {
  const { store, secrets, tries } = ports;
  const at = ports.now();
  const name = readSignInName(typed.signInName);
  const id = isProblem(name) ? undefined : await findByName(ports, name);
  const troubleCard = id === undefined ? undefined : await store.card(TROUBLE_CARD, id);
  const wait = Math.max(
    secondsToWait(troubleCard?.body as Trouble | undefined, at),
    tries.secondsToWait(typed.address, at),
  );
  if (wait > 0) return { refused: [tryLater(wait)] };
  const kept = id === undefined ? undefined : await passwordOf(ports, id);
  const checked = await secrets.checkPassword(typed.password, kept?.phc);
  if (checked === "busy") return { refused: [tryLater(5)] };
  const card = id === undefined ? undefined : await store.card(PERSON_CARD, id);
  const person = card && personOf(card);
  if (!checked.isRight || person?.state !== "active") {
    tries.failed(typed.address, at);
    await noteFailure(ports, id, at);
    return {
      refused: [
        problem(
          "SIGN_IN_REFUSED",
          "Name and password do not belong together. Try again, or ask an owner of the house.",
        ),
      ],
    };
  }
  const secret = secrets.newSecret();
  const cards: CardWrite[] = [
    sessionWrite(secrets.hash(secret), 0, { person: person.id, madeAt: at, seenAt: at }),
  ];
  if (troubleCard) cards.push({ kind: TROUBLE_CARD, id: person.id, expectedVersion: troubleCard.version });
  if (checked.isOld) {
    const phc = await secrets.hashPassword(typed.password);
    if (phc !== "busy") cards.push(passwordWrite(person.id, kept?.version ?? 0, phc));
  }
  const written = await store.writeCards({ cards, deed: { by: person.id, at, did: "sign in" } });
  return isProblem(written) ? { refused: [written] } : { person: person.id, secret };
}

/** Nobody can fill the ledger with names that there are not: those are noted once a minute. */
async function noteFailure(
  { store, tries }: Omit<PeoplePorts, "caller"> & { readonly tries: SignInTries },
  id: string | undefined,
  at: string,
): Promise<void> {
  const deed = { by: "program", at, did: "refuse sign-in" };
  if (id === undefined) {
    if (tries.isToBeNoted(at))
      await store.writeCards({ deed: { ...deed, did: "refuse sign-in of an unknown name" } });
    return;
  }
  for (let again = 0; again < COUNTED_AGAIN; again++) {
    const card = await store.card(TROUBLE_CARD, id);
    const next = { keys: {}, body: afterFailure(card?.body as Trouble | undefined, at) };
    const write = { kind: TROUBLE_CARD, id, expectedVersion: card?.version ?? 0, next };
    const written = await store.writeCards({ cards: [write], deed: { ...deed, about: id } });
    if (!isProblem(written) || written.code !== "CHANGED_MEANWHILE") return;
  }
}
