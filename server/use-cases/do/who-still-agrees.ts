import type { CardWrite } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf, holdingEntry } from "../../domain/people/entry.ts";
import { mayDo } from "../../domain/people/may-do.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import type { Store } from "../../ports/store.ts";

/**
 * Who of these persons, who agreed to somebody's (`by`) proposal, may decide on it still: not who was shut out, erased or given a lesser
 * role since. What is written with `cards` is kept only while that is so.
 */
export async function whoStillAgrees(
  store: Pick<Store, "cards">,
  agreed: readonly string[],
  by: string,
): Promise<{ readonly persons: readonly string[]; readonly cards: readonly CardWrite[] }> {
  // First: a change of a person after this is read is written to the same card.
  const entries = await store.cards(ENTRY_CARD, agreed);
  const cards = await store.cards(PERSON_CARD, agreed);
  const persons = agreed.filter((id) => {
    const card = cards.get(id);
    const person = card && personOf(card);
    if (person?.state !== "active") return false;
    const caller = { id, role: person.role, via: "session" } as const;
    return mayDo(caller, "decide on a proposal", { by, isShared: true }) === undefined;
  });
  return { persons, cards: persons.map((id) => holdingEntry(id, entryOf(entries.get(id)))) };
}
