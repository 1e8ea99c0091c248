import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { readSignInName } from "../../domain/people/sign-in-name.ts";
import { TROUBLE_CARD } from "../../domain/people/trouble.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import type { SignInTries } from "../../ports/sign-in-tries.ts";
import type { Refusal } from "../refusal.ts";
import { noteFailure, troubleOf, tryLater } from "./note-failure.ts";
import { openSession, type SignedIn } from "./open-session.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { checkSecondStep } from "./second-step.ts";
import { findByName, passwordOf, passwordWrite } from "./sign-in-card.ts";

export interface Typed {
  readonly signInName: string;
  readonly password: string;
  /** What is typed in the second step. */
  readonly code?: string;
  readonly address?: string;
}

/**
 * Signs somebody in with a new session. A wrong name and a wrong password are refused alike, after the same work; whether there is a
 * second step is told to nobody who has not got the password. Failures are counted for each person, and for each address in this
 * process alone.
 */
export async function signIn(
  ports: Omit<PeoplePorts, "caller"> & { readonly tries: SignInTries },
  typed: Typed,
): Promise<SignedIn | Refusal> {
  const { store, secrets, tries } = ports;
  const at = ports.now();
  const name = readSignInName(typed.signInName);
  const id = isProblem(name) ? undefined : await findByName(ports, name);
  const trouble = id === undefined ? undefined : await troubleOf(ports, id);
  const wait = Math.max(trouble?.wait ?? 0, tries.secondsToWait(typed.address, at));
  if (wait > 0) return { refused: [tryLater(wait)] };
  // Before what is shown is looked at: what ends all that was begun before ends this too.
  const { ended } = entryOf(id === undefined ? undefined : await store.card(ENTRY_CARD, id));
  const kept = id === undefined ? undefined : await passwordOf(ports, id);
  const checked = await secrets.checkPassword(typed.password, kept?.phc);
  if (checked === "busy") return { refused: [tryLater(5)] };
  const card = id === undefined ? undefined : await store.card(PERSON_CARD, id);
  const person = card && personOf(card);
  if (!checked.isRight || person?.state !== "active") {
    tries.failed(typed.address, at);
    // Nobody can fill the ledger with names that there are not: those are noted once a minute.
    const deed = { by: "program", at, did: "refuse sign-in of an unknown name" };
    if (id !== undefined) await noteFailure(ports, id, "refuse sign-in");
    else if (tries.isToBeNoted(at)) await store.writeCards({ deed });
    return { refused: [wrongPassword] };
  }
  const second = await checkSecondStep(ports, person.id, typed.code);
  if (isProblem(second)) {
    if (second.code === "SIGN_IN_REFUSED") {
      tries.failed(typed.address, at);
      await noteFailure(ports, person.id, "refuse second step");
    }
    return { refused: [second] };
  }
  const cards: CardWrite[] = [...second.cards];
  if (trouble?.card) cards.push({ kind: TROUBLE_CARD, id: person.id, expectedVersion: trouble.card.version });
  if (checked.isOld) {
    const phc = await secrets.hashPassword(typed.password);
    if (phc !== "busy") cards.push(passwordWrite(person.id, kept?.version ?? 0, phc));
  }
  const session = { person: person.id, ended, steps: second.steps };
  return openSession(ports, session, { cards, did: "sign in" });
}

const wrongPassword = problem(
  "SIGN_IN_REFUSED",
  "Name and password do not belong together. Try again, or ask an owner of the house.",
);
