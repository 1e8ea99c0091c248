import { type Caller, sharesTheHouse } from "../../domain/people/caller.ts";
import { ACCESS_CARD, isShown } from "../../domain/people/examination-access.ts";
import type { Store } from "../../ports/store.ts";

/** Which of these examinations are not shown to a caller (C25); none where nobody else uses the house. */
export async function hiddenFrom(
  store: Pick<Store, "cards">,
  caller: Caller | undefined,
  ids: readonly string[],
): Promise<ReadonlySet<string>> {
  if (ids.length === 0 || (caller && !sharesTheHouse(caller))) return new Set();
  const cards = await store.cards(ACCESS_CARD, ids);
  return new Set(ids.filter((id) => !isShown(cards.get(id), caller ?? NOBODY)));
}

const NOBODY = { id: "nobody" };
