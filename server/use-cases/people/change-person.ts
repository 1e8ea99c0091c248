import type { CardWrite } from "../../domain/card.ts";
import { OWNERS_CARD } from "../../domain/people/invitation.ts";
import { PERSON_CARD, type Person, personOf, personWrite } from "../../domain/people/person.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import type { Refusal } from "../refusal.ts";
import { endAllOf, type PeoplePorts } from "./people-ports.ts";

/** Gives somebody another role, shuts out or lets in again. One who is shut out loses all sessions and tokens. */
export async function changePerson(
  ports: PeoplePorts,
  id: string,
  expectedVersion: number,
  change: Partial<Pick<Person, "role" | "state">>,
): Promise<Person | Refusal> {
  const refusal = refuseCaller(ports, "manage people");
  if (refusal) return refusal;
  const { store } = ports;
  const card = await store.card(PERSON_CARD, id);
  const before = card && personOf(card);
  if (before === undefined)
    return { refused: [problem("UNKNOWN_PERSON", `There is no person ${id} here; look in the list.`)] };
  const { id: _, version: __, ...person } = before;
  const next: Person = { ...person, ...change };
  const cards: CardWrite[] = [personWrite(id, expectedVersion, next)];
  if (isActiveOwner(person) || next.role === "owner") {
    const owners = await store.card(OWNERS_CARD.kind, OWNERS_CARD.id);
    if (!isActiveOwner(next) && (await isLastOwner(ports, id, person)))
      return {
        refused: [problem("LAST_OWNER", "This is the only owner. Make somebody else an owner first.")],
      };
    cards.push({ ...OWNERS_CARD, expectedVersion: owners?.version ?? 0, next: { keys: {}, body: {} } });
  }
  if (next.state === "shut out") cards.push(...(await endAllOf(ports, id, { tokens: true })));
  const written = await store.writeCards({ ...signed(ports, didOf(person, next), id), cards });
  return isProblem(written) ? { refused: [written] } : next;
}

const isActiveOwner = ({ role, state }: Person): boolean => role === "owner" && state === "active";

/** Whether a house would be without an active owner if this one went. */
export async function isLastOwner({ store }: PeoplePorts, id: string, person: Person): Promise<boolean> {
  if (!isActiveOwner(person)) return false;
  const { rows } = await store.listCards(
    { kind: PERSON_CARD, key: { name: "role", value: "owner" } },
    { first: 200 },
  );
  return !rows.map(personOf).some((one) => one !== undefined && one.id !== id && isActiveOwner(one));
}

/** As the ledger tells it. */
function didOf(before: Person, after: Person): string {
  if (before.state !== after.state)
    return after.state === "shut out" ? "shut out person" : "let person in again";
  return `make person ${after.role}`;
}
