import type { CardWrite } from "../../domain/card.ts";
import type { Problem } from "../../domain/problem.ts";
import type { Written } from "../../domain/written.ts";
import type { PeoplePorts } from "./people-ports.ts";

const SALT = { kind: "house", id: "salt" } as const;
export const NAME_CARD = "sign-in-name";
export const PASSWORD_CARD = "password";

/** The secret of the house; undefined before `makeSalt`. */
export async function houseSecret({ store }: Pick<PeoplePorts, "store">): Promise<string | undefined> {
  const card = await store.card(SALT.kind, SALT.id);
  return (card?.body as { readonly salt: string } | undefined)?.salt;
}

/**
 * The id of the card of a name to sign in with: a hash over a secret of the house, since the ledger names cards by their ids and may
 * hold nobody's name. Undefined before `makeSalt`.
 */
async function idOfName(ports: Pick<PeoplePorts, "store" | "secrets">, name: string) {
  const salt = await houseSecret(ports);
  return salt === undefined ? undefined : ports.secrets.hash(`${salt} ${name}`);
}

/** Gives a house the secret that names are hashed with, if it has none. */
export async function makeSalt({
  store,
  secrets,
  now,
}: Pick<PeoplePorts, "store" | "secrets" | "now">): Promise<Written | Problem | undefined> {
  if (await store.card(SALT.kind, SALT.id)) return undefined;
  const next = { keys: {}, body: { salt: secrets.newSecret() } };
  const deed = { by: "program", at: now(), did: "begin accounts" };
  return store.writeCards({ cards: [{ ...SALT, expectedVersion: 0, next }], deed });
}

/** The person that a name belongs to. */
export async function findByName(
  ports: Pick<PeoplePorts, "store" | "secrets">,
  name: string,
): Promise<string | undefined> {
  const id = await idOfName(ports, name);
  const card = id === undefined ? undefined : await ports.store.card(NAME_CARD, id);
  return (card?.body as { readonly person: string } | undefined)?.person;
}

/** The card that gives a name to a person. */
export async function nameWrite(ports: PeoplePorts, name: string, person: string): Promise<CardWrite> {
  const id = await idOfName(ports, name);
  if (id === undefined) throw new Error("There are no accounts yet: makeSalt comes first");
  const next = { keys: { person: [person] }, body: { person, name } };
  return { kind: NAME_CARD, id, expectedVersion: 0, next };
}

/** The name that a person signs in with. */
export async function nameOf({ store }: Pick<PeoplePorts, "store">, person: string): Promise<string> {
  const key = { name: "person", value: person };
  const { rows } = await store.listCards({ kind: NAME_CARD, key }, { first: 1 });
  return (rows[0]?.body as { readonly name: string } | undefined)?.name ?? "";
}

/** The card that keeps the hash of a password. */
export const passwordWrite = (person: string, expectedVersion: number, phc: string): CardWrite => ({
  ...{ kind: PASSWORD_CARD, id: person, expectedVersion },
  next: { keys: {}, body: { phc } },
});

/** The hash of somebody's password, with the version of its card. */
export async function passwordOf({ store }: Pick<PeoplePorts, "store">, person: string) {
  const card = await store.card(PASSWORD_CARD, person);
  return { version: card?.version ?? 0, phc: (card?.body as { readonly phc: string } | undefined)?.phc };
}
