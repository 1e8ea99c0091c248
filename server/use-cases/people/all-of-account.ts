import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, endingEntry, entryOf } from "../../domain/people/entry.ts";
import { factorPlace } from "../../domain/people/factor.ts";
import { IDENTITY_CARD } from "../../domain/people/identity.ts";
import { INVITATION_CARD } from "../../domain/people/invitation.ts";
import { PASSKEY_CARD } from "../../domain/people/passkey.ts";
import { recoveryCodesPlace } from "../../domain/people/recovery-codes.ts";
import { SESSION_CARD } from "../../domain/people/session.ts";
import { TOKEN_CARD } from "../../domain/people/token.ts";
import { TROUBLE_CARD } from "../../domain/people/trouble.ts";
import { readAll } from "../../ports/read-all.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { NAME_CARD, PASSWORD_CARD } from "./sign-in-card.ts";

/** What takes away all that lets a person in, and what is on its way in; with `name` also the name to sign in with. */
export async function allOfAccount(
  { store, now }: Pick<PeoplePorts, "store" | "now">,
  person: string,
  { name }: { readonly name: boolean },
): Promise<readonly CardWrite[]> {
  // First: what is made after this is read is not kept, or this is made anew.
  const entry = entryOf(await store.card(ENTRY_CARD, person));
  const listed = [
    SESSION_CARD,
    TOKEN_CARD,
    IDENTITY_CARD,
    PASSKEY_CARD,
    INVITATION_CARD,
    ...(name ? [NAME_CARD] : []),
  ];
  const places = [factorPlace(person).kind, recoveryCodesPlace(person).kind, PASSWORD_CARD, TROUBLE_CARD];
  const [lists, ones] = await Promise.all([
    Promise.all(
      listed.map((kind) =>
        readAll((page) => store.listCards({ kind, key: { name: "person", value: person } }, page)),
      ),
    ),
    Promise.all(places.map((kind) => store.card(kind, person))),
  ]);
  const gone = [...lists.flat(), ...ones.filter((card) => card !== undefined)];
  return [
    endingEntry(person, entry, now()),
    ...gone.map(({ kind, id, version }) => ({ kind, id, expectedVersion: version })),
  ];
}

/** The kinds of these cards: what is made or used up meanwhile is taken away with the rest. */
export const KINDS_OF_ACCOUNT: readonly string[] = [
  ...[ENTRY_CARD, SESSION_CARD, TOKEN_CARD, IDENTITY_CARD, PASSKEY_CARD, INVITATION_CARD, NAME_CARD],
  ...[factorPlace("").kind, recoveryCodesPlace("").kind, PASSWORD_CARD, TROUBLE_CARD],
];
