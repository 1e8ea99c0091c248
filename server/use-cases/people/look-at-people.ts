import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { factorOf, factorPlace } from "../../domain/people/factor.ts";
import { IDENTITY_CARD, identityOf } from "../../domain/people/identity.ts";
import { passkeyOf } from "../../domain/people/passkey.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { recoveryCodesOf, recoveryCodesPlace } from "../../domain/people/recovery-codes.ts";
import { isLive, SESSION_CARD, sessionOf } from "../../domain/people/session.ts";
import { TOKEN_CARD, tokenOf } from "../../domain/people/token.ts";
import { readAll } from "../../ports/read-all.ts";
import { refuseCaller } from "../acting.ts";
import { passkeysOf } from "./passkeys.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { nameOf } from "./sign-in-card.ts";

/** All who have an account, by their names. */
export async function listPeople(ports: PeoplePorts) {
  const refusal = refuseCaller(ports, "see the people");
  if (refusal) return refusal;
  const cards = await readAll((page) => ports.store.listCards({ kind: PERSON_CARD }, page));
  const people = cards.map(personOf).filter((one) => one !== undefined);
  return { people: people.sort((a, b) => (a.name < b.name ? -1 : 1)) };
}

/** One's own account, with what gets in for it. */
export async function lookAtOwnAccount(ports: PeoplePorts) {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const { store } = ports;
  const id = ports.caller?.id ?? "";
  const card = await store.card(PERSON_CARD, id);
  const key = { name: "person", value: id };
  const [sessions, tokens, identities] = await Promise.all(
    [SESSION_CARD, TOKEN_CARD, IDENTITY_CARD].map((kind) =>
      readAll((page) => store.listCards({ kind, key }, page)),
    ),
  );
  const now = ports.now();
  const entry = entryOf(await store.card(ENTRY_CARD, id));
  const [factor, codes] = await Promise.all(
    [factorPlace(id), recoveryCodesPlace(id)].map((place) => store.card(place.kind, place.id)),
  );
  return {
    linked: (identities ?? []).map((one) => ({ id: one.id, ...identityOf(one) })),
    passkeys: (await passkeysOf(ports, id)).map((one) => {
      const { label, madeAt } = passkeyOf(one);
      return { id: one.id, label, madeAt };
    }),
    hasDevice: factor !== undefined && factorOf(factor).state === "on",
    recoveryCodes: codes === undefined ? 0 : recoveryCodesOf(codes).hashes.length,
    signInName: await nameOf(ports, id),
    name: (card && personOf(card))?.name ?? "",
    sessions: (sessions ?? [])
      .map((one) => ({ id: one.id, isThis: one.id === ports.here, ...sessionOf(one) }))
      .filter((one) => isLive(one, entry, now))
      .map(({ person: _, ended: __, ...session }) => session),
    tokens: (tokens ?? [])
      .map((one) => ({ id: one.id, ...tokenOf(one) }))
      .map(({ person: _, ...token }) => token),
  };
}
