import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { readSignInName } from "../../domain/people/sign-in-name.ts";
import { TROUBLE_CARD } from "../../domain/people/trouble.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
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

type Ports = Omit<PeoplePorts, "caller">;
/** Who a name belongs to; of one that there is not, the same is read and counted. */
interface Whose {
  readonly id: string;
  readonly name: string;
  readonly isKnown: boolean;
}
const NOBODY = "nobody";

/**
 * Signs somebody in with a new session. A wrong name and a wrong password are refused alike, after the same work and time; whether there is
 * a second step is told to nobody who has not got the password. Failures are counted for each person, and in this process alone for each
 * address and for names that there are not.
 */
export async function signIn(ports: Ports, typed: Typed): Promise<SignedIn | Refusal> {
  const { store, secrets, tries } = ports;
  const name = readSignInName(typed.signInName);
  const found = isProblem(name) ? undefined : await findByName(ports, name);
  const whose = { id: found ?? NOBODY, name: isProblem(name) ? "" : name, isKnown: found !== undefined };
  const refusal = await refuseTooMany(ports, whose, typed.address);
  if (refusal) return refusal;
  // Before what is shown is looked at: what ends all that was begun before ends this too.
  const { ended } = entryOf(await store.card(ENTRY_CARD, whose.id));
  const kept = await passwordOf(ports, whose.id);
  const checked = await secrets.checkPassword(typed.password, kept.phc);
  if (checked === "busy") return { refused: [tryLater(5)] };
  const settled = tries.settle();
  const shown = { ...checked, ended, passwordVersion: kept.version };
  const answer = await tries.inLine(found ?? `name ${whose.name}`, () => lookAt(ports, typed, whose, shown));
  if (answer === "busy") return { refused: [tryLater(5)] };
  if (isRefusal(answer)) await settled;
  return answer;
}

/** What came of comparing the password. */
interface Shown {
  readonly isRight: boolean;
  readonly isOld: boolean;
  readonly ended: number;
  readonly passwordVersion: number;
}

async function lookAt(
  ports: Ports,
  { password, code, address }: Typed,
  whose: Whose,
  { isRight, isOld, ended, passwordVersion }: Shown,
): Promise<SignedIn | Refusal> {
  const { store, secrets, tries } = ports;
  const at = ports.now();
  // Others may have failed while this one was compared.
  const refusal = await refuseTooMany(ports, whose, address);
  if (refusal) return refusal;
  const card = await store.card(PERSON_CARD, whose.id);
  const person = card && personOf(card);
  if (!isRight || person?.state !== "active") {
    tries.failed(address, at);
    await noteWrong(ports, whose);
    return { refused: [wrongPassword] };
  }
  const second = await checkSecondStep(ports, person.id, code);
  if (isProblem(second)) {
    if (second.code === "SIGN_IN_REFUSED") {
      tries.failed(address, at);
      await noteFailure(ports, person.id, "refuse second step");
    }
    return { refused: [second] };
  }
  const cards: CardWrite[] = [...second.cards];
  const trouble = await store.card(TROUBLE_CARD, person.id);
  if (trouble) cards.push({ kind: TROUBLE_CARD, id: person.id, expectedVersion: trouble.version });
  if (isOld) {
    const phc = await secrets.hashPassword(password);
    if (phc !== "busy") cards.push(passwordWrite(person.id, passwordVersion, phc));
  }
  const session = { person: person.id, ended, steps: second.steps };
  return openSession(ports, session, { cards, did: "sign in" });
}

/** Why whoever it is has to wait. */
async function refuseTooMany(
  ports: Ports,
  { id, name, isKnown }: Whose,
  address: string | undefined,
): Promise<Refusal | undefined> {
  const { tries, now } = ports;
  const { wait } = await troubleOf(ports, id);
  const own = isKnown ? wait : tries.secondsToWaitAs(name, now());
  const seconds = Math.max(own, tries.secondsToWait(address, now()));
  return seconds > 0 ? { refused: [tryLater(seconds)] } : undefined;
}

/** Counts a wrong password, or a wrong name. Nobody can fill the ledger with names that there are not: those are noted once a minute. */
async function noteWrong(ports: Ports, { id, name, isKnown }: Whose): Promise<void> {
  if (isKnown) return noteFailure(ports, id, "refuse sign-in");
  const { tries, store } = ports;
  const at = ports.now();
  tries.failedAs(name, at);
  const deed = { by: "program", at, did: "refuse sign-in of an unknown name" };
  if (tries.isToBeNoted(at)) await store.writeCards({ deed });
}

const wrongPassword = problem(
  "SIGN_IN_REFUSED",
  "Name and password do not belong together. Try again, or ask an owner of the house.",
);
