import { MOST_SHOWN_TO } from "../domain/people/examination-access.ts";
import { PERSON_CARD, personOf } from "../domain/people/person.ts";
import { problem } from "../domain/problem.ts";
import type { Store } from "../ports/store.ts";
import { type Refusal, refusalFrom } from "./refusal.ts";

/** Refuses to show an examination to somebody who is not of this house, or to very many. */
export async function refuseUnfitAccess(
  { store }: { readonly store: Store },
  seenBy: readonly string[],
): Promise<Refusal | undefined> {
  if (seenBy.length > MOST_SHOWN_TO)
    return refusalFrom([
      problem(
        "TOO_LARGE",
        `An examination is shown to the whole house, or to ${MOST_SHOWN_TO} persons at most.`,
        ["seenBy"],
      ),
    ]);
  const people = await store.cards(PERSON_CARD, seenBy);
  return refusalFrom(
    seenBy.flatMap((id, i) => {
      const card = people.get(id);
      if (card && personOf(card)?.state === "active") return [];
      return [
        problem("UNKNOWN_PERSON", "Nobody in this house is called so; choose from the list.", ["seenBy", i]),
      ];
    }),
  );
}
