import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { refuseCaller } from "../acting.ts";
import { hiddenFrom } from "./hidden-from.ts";
import type { PeoplePorts } from "./people-ports.ts";

export const AUDIT_PAGE = 100;

/**
 * What was done in the house before a write, newest first; the ledger with the names of those who have one. That something was done
 * to an examination which is not shown to the caller is told, to which one is not.
 */
export async function readAudit(ports: PeoplePorts, before: number | undefined) {
  const refusal = refuseCaller(ports, "read the audit");
  if (refusal) return refusal;
  const { store } = ports;
  const last = Math.min((before ?? Number.POSITIVE_INFINITY) - 1, await store.newestWrite());
  const from = Math.max(0, last - AUDIT_PAGE);
  const writes = last <= from ? [] : await store.writesAfter(from, last - from);
  const ids = writes.flatMap(({ deed }) => [deed?.by, deed?.about]).filter((id) => id?.startsWith("person."));
  const cards = await store.cards(PERSON_CARD, [...new Set(ids as string[])]);
  const hidden = await hiddenFrom(store, ports.caller, [
    ...new Set(
      writes
        .flatMap(({ deed, examination }) => [examination?.id, deed?.about])
        .filter((id) => id?.startsWith("examination.") === true) as string[],
    ),
  ]);
  const unlessHidden = (id: string | undefined) => (id !== undefined && hidden.has(id) ? undefined : id);
  const nameOf = (id: string | undefined) => {
    if (id?.startsWith("person.") !== true) return undefined;
    const card = cards.get(id);
    return (card && personOf(card))?.name ?? "a former member";
  };
  return {
    entries: writes.toReversed().map(({ sequence, revision, examination, deed, hash }) => ({
      ...{
        sequence,
        revision,
        hash,
        examination: unlessHidden(examination?.id),
        at: deed?.at,
        did: deed?.did,
      },
      ...{
        by: deed?.by,
        byName: nameOf(deed?.by),
        about: unlessHidden(deed?.about),
        aboutName: nameOf(deed?.about),
      },
    })),
    hasMore: from > 0,
  };
}
