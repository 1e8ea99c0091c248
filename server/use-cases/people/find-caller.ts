import { type Caller, ROLES } from "../../domain/people/caller.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { isLive, isToBeNoted, SESSION_CARD, sessionOf, sessionWrite } from "../../domain/people/session.ts";
import { TOKEN_CARD, tokenOf } from "../../domain/people/token.ts";
import type { PeoplePorts } from "./people-ports.ts";

/** What a request shows of who sends it. */
export interface Credentials {
  /** What the cookie of a browser holds. */
  readonly session?: string;
  /** What a script sends. */
  readonly token?: string;
}
export interface Found {
  readonly caller: Caller;
  /** Id of the session that it is known by. */
  readonly session?: string;
}

/**
 * Who sends a request; nobody if what it shows is forged, too old or was ended, or the person was shut out. A token goes before a
 * cookie: a script that shows both is held to what the token may. The role is that of this moment. What is only `looked` up does not keep
 * a session from ending.
 */
export async function findCaller(
  ports: Omit<PeoplePorts, "caller" | "newSuffix">,
  { session, token }: Credentials,
  looked?: "looked",
): Promise<Found | undefined> {
  if (token !== undefined) return findByToken(ports, token);
  return session === undefined ? undefined : findBySession(ports, session, looked === undefined);
}

async function findByToken(
  { store, secrets, now }: Omit<PeoplePorts, "caller" | "newSuffix">,
  secret: string,
): Promise<Found | undefined> {
  const card = await store.card(TOKEN_CARD, secrets.hash(secret));
  const token = card && tokenOf(card);
  if (token === undefined || token.until <= now()) return undefined;
  const person = await activePerson(store, token.person);
  if (person === undefined) return undefined;
  const role = ROLES[Math.min(ROLES.indexOf(person.role), ROLES.indexOf(token.role))] ?? "reader";
  return { caller: { id: person.id, role, via: "token" } };
}

async function findBySession(
  { store, secrets, now, secondStepFrom }: Omit<PeoplePorts, "caller" | "newSuffix">,
  secret: string,
  isUsed: boolean,
): Promise<Found | undefined> {
  const id = secrets.hash(secret);
  const card = await store.card(SESSION_CARD, id);
  const session = card && sessionOf(card);
  const at = now();
  if (session === undefined) return undefined;
  const [person, entry] = await Promise.all([
    activePerson(store, session.person),
    store.card(ENTRY_CARD, session.person),
  ]);
  if (person === undefined || !isLive(session, entryOf(entry), at)) return undefined;
  if (isUsed && isToBeNoted(session, at))
    // Where another request noted it at the same time, or it was just ended, this one need not.
    await store.writeCards({
      cards: [sessionWrite(id, card?.version ?? 0, { ...session, seenAt: at })],
      deed: { by: person.id, at, did: "use session" },
    });
  const isHeld =
    session.steps !== 2 &&
    secondStepFrom !== undefined &&
    ROLES.indexOf(person.role) >= ROLES.indexOf(secondStepFrom);
  const caller = { id: person.id, role: person.role, via: "session" } as const;
  return { caller: { ...caller, ...(isHeld ? { isHeld } : {}) }, session: id };
}

async function activePerson(store: PeoplePorts["store"], id: string) {
  const card = await store.card(PERSON_CARD, id);
  const person = card && personOf(card);
  return person?.state === "active" ? person : undefined;
}
