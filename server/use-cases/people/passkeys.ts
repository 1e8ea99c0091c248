import { ENTRY_CARD, entryOf, isEndedSince } from "../../domain/people/entry.ts";
import { PASSKEY_CARD, passkeyOf, passkeyWrite } from "../../domain/people/passkey.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { readShownName } from "../../domain/people/sign-in-name.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import type { Asked, Passkeys } from "../../ports/passkeys.ts";
import { readAll } from "../../ports/read-all.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { type Confirming, confirmSelf } from "./confirm-self.ts";
import { openSession, type SignedIn } from "./open-session.ts";
import { isOwnAddress } from "./own-origin.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { sealBegun, unsealBegun } from "./sealed-way.ts";
import { nameOf } from "./sign-in-card.ts";
import { endOthers, writeAsSelf } from "./write-as-self.ts";

type Ports = PeoplePorts & { readonly passkeys: Passkeys };
/** What the browser hands to the device, and what it keeps meanwhile. */
export interface Begun {
  readonly options: object;
  readonly way: string;
}
export interface Came {
  readonly way: string;
  /** What the device answered, as JSON. */
  readonly response: string;
}

const MAKE = "make passkey";
const SIGN = "sign in by passkey";
const refused = problem(
  "SIGN_IN_REFUSED",
  "This key is not known here, or what it signed does not hold any more. Begin anew, or sign in with your password.",
);

/** Begins to make a key for one's own account. */
export async function beginPasskey(
  ports: Ports,
  origin: string,
  confirming: Confirming,
): Promise<Begun | Refusal> {
  if (!isOwnAddress(origin, ports.origins ?? [])) return { refused: [foreign] };
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  const asked: Asked = { origin, challenge: ports.secrets.newSecret() };
  const known = (await passkeysOf(ports, self.person)).map((card) => passkeyOf(card).key);
  const name = await nameOf(ports, self.person);
  const options = await ports.passkeys.askToMake(asked, { person: self.person, name, known });
  if (self.cards.length > 0) {
    const written = await ports.store.writeCards({ ...signed(ports, "begin passkey"), cards: self.cards });
    if (isProblem(written)) return { refused: [written] };
  }
  return { options, way: await sealBegun(ports, MAKE, { ...asked, person: self.person }) };
}

/** Keeps the key that was made. All other sessions end; the one that asks counts as two steps. */
export async function finishPasskey(
  ports: Ports,
  { way, response, label }: Came & { readonly label: string },
): Promise<{ readonly kept: true } | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const { secrets, passkeys } = ports;
  const name = readShownName(label);
  if (isProblem(name)) return { refused: [{ ...name, path: ["label"] }] };
  const begun = await unsealBegun<Asked & { readonly person: string }>(ports, MAKE, way);
  const person = ports.caller?.id ?? "";
  if (begun === undefined || begun.what.person !== person) return { refused: [refused] };
  const made = await passkeys.checkMade(begun.what, parse(response));
  if (made === undefined) return { refused: [refused] };
  const times = { madeAt: ports.now(), lastBegun: begun.begunAt };
  const { deed } = signed(ports, "add passkey");
  const written = await writeAsSelf(ports, deed, (self) =>
    isEndedSince(self.entry, begun.begunAt)
      ? { refused: [refused] }
      : [
          passkeyWrite(secrets.hash(made.key), 0, { ...made, ...times, person, label: name }),
          ...endOthers(self, ports.now(), 2),
        ],
  );
  return isRefusal(written) ? written : { kept: true };
}

/** Begins to sign in by a key, whosever it is. */
export async function beginPasskeySignIn(ports: Ports, origin: string): Promise<Begun | Refusal> {
  if (!isOwnAddress(origin, ports.origins ?? [])) return { refused: [foreign] };
  const asked: Asked = { origin, challenge: ports.secrets.newSecret() };
  return { options: await ports.passkeys.askToSign(asked), way: await sealBegun(ports, SIGN, asked) };
}

/** Signs in whoever the key belongs to: in two steps, as the device asked who holds it. */
export async function finishPasskeySignIn(
  ports: Ports,
  { way, response }: Came,
): Promise<SignedIn | Refusal> {
  const { store, secrets, passkeys } = ports;
  const begun = await unsealBegun<Asked>(ports, SIGN, way);
  const answered = parse(response);
  const key = passkeys.keyOf(answered);
  const card = key === undefined ? undefined : await store.card(PASSKEY_CARD, secrets.hash(key));
  const passkey = card && passkeyOf(card);
  if (begun === undefined || card === undefined || passkey === undefined) return { refused: [refused] };
  const entry = entryOf(await store.card(ENTRY_CARD, passkey.person));
  const counter = await passkeys.checkSigned(begun.what, answered, passkey);
  const kept = await store.card(PERSON_CARD, passkey.person);
  const person = kept && personOf(kept);
  if (counter === undefined || person?.state !== "active") return { refused: [refused] };
  if (begun.begunAt <= passkey.lastBegun || isEndedSince(entry, begun.begunAt)) return { refused: [refused] };
  const cards = [passkeyWrite(card.id, card.version, { ...passkey, counter, lastBegun: begun.begunAt })];
  return openSession(ports, { person: person.id, ended: entry.ended, steps: 2 }, { cards, did: SIGN });
}

/** Takes one of one's own keys away. */
export async function removePasskey(
  ports: PeoplePorts,
  id: string,
  confirming: Confirming,
): Promise<{ readonly removed: true } | Refusal> {
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  const card = await ports.store.card(PASSKEY_CARD, id);
  if (card === undefined || passkeyOf(card).person !== self.person)
    return { refused: [problem("UNKNOWN_SESSION", "You have no such passkey; it may be gone already.")] };
  const cards = [{ kind: PASSKEY_CARD, id, expectedVersion: card.version }, ...self.cards];
  const written = await ports.store.writeCards({ ...signed(ports, "remove passkey"), cards });
  return isProblem(written) ? { refused: [written] } : { removed: true };
}

/** The cards of somebody's keys. */
export const passkeysOf = ({ store }: Pick<PeoplePorts, "store">, person: string) =>
  readAll((page) => store.listCards({ kind: PASSKEY_CARD, key: { name: "person", value: person } }, page));

const foreign = problem("WRONG_FORMAT", "This is no address of the house.", ["origin"]);

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
