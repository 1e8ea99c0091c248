import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import {
  INVITATION_CARD,
  invitationOf,
  invitationWrite,
  OWNERS_CARD,
} from "../../domain/people/invitation.ts";
import { judgePassword } from "../../domain/people/judge-password.ts";
import { PERSON_CARD, type Person, personOf } from "../../domain/people/person.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { allOfAccount, KINDS_OF_ACCOUNT } from "./all-of-account.ts";
import { isLastOwner } from "./change-person.ts";
import type { Invited } from "./invite.ts";
import { isGivenByOwner } from "./is-given-by-owner.ts";
import { tryLater } from "./note-failure.ts";
import { openSession, type SignedIn } from "./open-session.ts";
import { later, type PeoplePorts } from "./people-ports.ts";
import { nameOf, passwordWrite } from "./sign-in-card.ts";
import { writeAnew } from "./write-anew.ts";

const HOLDS = 24 * 3_600_000;

/**
 * Where somebody lost password or device: nothing of before lets in any more (sessions, tokens, device, codes, links elsewhere), and a
 * link, for a day and once, lets the person choose a new password. Whoever gives it never knows that.
 */
export async function beginAnew(ports: PeoplePorts, id: string): Promise<Invited | Refusal> {
  const found = await findPerson(ports, id);
  if ("refused" in found) return found;
  const { deed } = signed(ports, "begin account anew", id);
  const { by, at } = deed;
  const secret = ports.secrets.newSecret();
  const until = later(at, HOLDS);
  const invitation = { role: found.person.role, by, madeAt: at, until, person: id };
  const written = await writeAnew(ports.store, deed, KINDS_OF_ACCOUNT, async () => [
    ...(await allOfAccount(ports, id, { name: false })),
    invitationWrite(ports.secrets.hash(secret), invitation),
  ]);
  return isRefusal(written) ? written : { secret, until };
}

/** Takes such a link: the person's new password, and signs in with it. */
export async function takeNewPassword(
  ports: PeoplePorts,
  { secret: shown, password }: { readonly secret: string; readonly password: string },
): Promise<SignedIn | Refusal> {
  const { store, secrets } = ports;
  const at = ports.now();
  const card = await store.card(INVITATION_CARD, secrets.hash(shown));
  const holds = card && (await isGivenByOwner(ports, invitationOf(card)));
  const id = card && holds ? invitationOf(card).person : undefined;
  const kept = id === undefined ? undefined : await store.card(PERSON_CARD, id);
  const person = kept && personOf(kept);
  const { ended } = entryOf(id === undefined ? undefined : await store.card(ENTRY_CARD, id));
  if (card === undefined || id === undefined || person?.state !== "active" || invitationOf(card).until <= at)
    return { refused: [usedUp] };
  const weak = judgePassword(password, [await nameOf(ports, id), person.name], secrets.isCommonPassword);
  if (weak) return { refused: [weak] };
  const phc = await secrets.hashPassword(password);
  if (phc === "busy") return { refused: [tryLater(5)] };
  const before = await store.card("password", id);
  const cards = [
    { kind: INVITATION_CARD, id: card.id, expectedVersion: card.version },
    passwordWrite(id, before?.version ?? 0, phc),
  ];
  const signedIn = await openSession(
    ...([ports, { person: id, ended, steps: 1 }, { cards, did: "choose new password" }] as const),
  );
  return isRefusal(signedIn) ? { refused: [orUsedUp(signedIn.refused[0])] } : signedIn;
}

/**
 * Takes away for ever what says who a person is and what she signed in with. What she did stays under an id that says nothing, as of a
 * former member; the ledger still verifies.
 */
export async function erasePerson(
  ports: PeoplePorts,
  id: string,
  expectedVersion: number,
): Promise<{ readonly erased: true } | Refusal> {
  const found = await findPerson(ports, id);
  if ("refused" in found) return found;
  const { deed } = signed(ports, "erase person", id);
  const written = await writeAnew(ports.store, deed, KINDS_OF_ACCOUNT, async () => {
    const cards: CardWrite[] = [
      { kind: PERSON_CARD, id, expectedVersion },
      ...(await allOfAccount(ports, id, { name: true })),
    ];
    if (found.person.role === "owner") {
      const owners = await ports.store.card(OWNERS_CARD.kind, OWNERS_CARD.id);
      if (await isLastOwner(ports, id, found.person))
        return {
          refused: [problem("LAST_OWNER", "This is the only owner. Make somebody else an owner first.")],
        };
      cards.push({ ...OWNERS_CARD, expectedVersion: owners?.version ?? 0, next: { keys: {}, body: {} } });
    }
    return cards;
  });
  return isRefusal(written) ? written : { erased: true };
}

async function findPerson(ports: PeoplePorts, id: string): Promise<{ readonly person: Person } | Refusal> {
  const refusal = refuseCaller(ports, "manage people");
  if (refusal) return refusal;
  const card = await ports.store.card(PERSON_CARD, id);
  const person = card && personOf(card);
  if (person) return { person };
  return { refused: [problem("UNKNOWN_PERSON", `There is no person ${id} here; look in the list.`)] };
}

const usedUp = problem(
  "LINK_USED_UP",
  "This link holds no more: it was used, or is too old. Ask an owner of the house for another.",
);
const orUsedUp = (written: Problem): Problem => (written.code === "CHANGED_MEANWHILE" ? usedUp : written);
