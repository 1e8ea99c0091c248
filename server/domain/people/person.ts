import type { Card, CardWrite } from "../card.ts";
import { ROLES, type Role } from "./caller.ts";

/** Somebody with an account. The id says nothing of who it is, so that the name can be taken away. */
export interface Person {
  /** As the others in the house see it. */
  readonly name: string;
  readonly role: Role;
  /** One who is shut out gets in nowhere; what she did stays hers. */
  readonly state: "active" | "shut out";
}
export interface KeptPerson extends Person {
  readonly id: string;
  readonly version: number;
}

/** The kind of the cards that persons are kept on. */
export const PERSON_CARD = "person";

/** What a card says; one that says nothing sound is of nobody. */
export function personOf({ id, version, body }: Card): KeptPerson | undefined {
  const { name, role, state } = body as Partial<Record<keyof Person, unknown>>;
  const known = ROLES.find((one) => one === role);
  if (typeof name !== "string" || known === undefined || (state !== "active" && state !== "shut out"))
    return undefined;
  return { id, version, name, role: known, state };
}

/** The card that keeps a person from now on. */
export const personWrite = (id: string, expectedVersion: number, person: Person): CardWrite => ({
  ...{ kind: PERSON_CARD, id, expectedVersion },
  next: { keys: { role: [person.role], state: [person.state] }, body: person },
});
