import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import type { Store } from "../../ports/store.ts";

/** What those who did something are called: persons by their names, one whose name was taken away as a former member. */
export async function namesOfPersons(
  { store }: { readonly store: Store },
  ids: readonly string[],
): Promise<(by: string) => string> {
  const persons = [...new Set(ids.filter((id) => id.startsWith("person.")))];
  const cards = await store.cards(PERSON_CARD, persons);
  return (by) => {
    if (by === "local") return "whoever sits at this machine";
    if (!by.startsWith("person.")) return by;
    const card = cards.get(by);
    return (card && personOf(card)?.name) ?? "a former member";
  };
}
