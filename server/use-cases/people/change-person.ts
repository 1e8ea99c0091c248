import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, endingEntry, entryOf, holdingEntry } from "../../domain/people/entry.ts";
import { OWNERS_CARD } from "../../domain/people/invitation.ts";
import { PERSON_CARD, type Person, personOf, personWrite } from "../../domain/people/person.ts";
import { TOKEN_CARD } from "../../domain/people/token.ts";
import { problem } from "../../domain/problem.ts";
import { readAll } from "../../ports/read-all.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { refuseOtherVersion } from "../refuse-other-version.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { writeAnew } from "./write-anew.ts";

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
  const changed = refuseOtherVersion("person", before, expectedVersion);
  if (changed) return changed;
  const { id: _, version: __, ...person } = before;
  const next: Person = { ...person, ...change };
  const { deed } = signed(ports, didOf(person, next), id);
  const written = await writeAnew(store, deed, [ENTRY_CARD, TOKEN_CARD], async () => {
    const cards: CardWrite[] = [personWrite(id, expectedVersion, next)];
    if (isActiveOwner(person) || next.role === "owner") {
      const owners = await store.card(OWNERS_CARD.kind, OWNERS_CARD.id);
      if (!isActiveOwner(next) && (await isLastOwner(ports, id, person)))
        return {
          refused: [problem("LAST_OWNER", "This is the only owner. Make somebody else an owner first.")],
        };
      cards.push({ ...OWNERS_CARD, expectedVersion: owners?.version ?? 0, next: { keys: {}, body: {} } });
    }
    // Whoever counts on what the person may do now writes that card too.
    cards.push(...(next.state === "shut out" ? await endings(ports, id) : [await holding(ports, id)]));
    return cards;
  });
  return isRefusal(written) ? written : next;
}

/** What ends the sessions of a person and takes back the tokens. */
async function endings({ store, now }: PeoplePorts, person: string): Promise<readonly CardWrite[]> {
  const entry = entryOf(await store.card(ENTRY_CARD, person));
  const key = { name: "person", value: person };
  const tokens = await readAll((page) => store.listCards({ kind: TOKEN_CARD, key }, page));
  return [
    endingEntry(person, entry, now()),
    ...tokens.map(({ kind, id, version }) => ({ kind, id, expectedVersion: version })),
  ];
}

const holding = async ({ store }: PeoplePorts, person: string): Promise<CardWrite> =>
  holdingEntry(person, entryOf(await store.card(ENTRY_CARD, person)));

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
