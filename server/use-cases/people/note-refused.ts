import type { Clock } from "../../ports/clock.ts";
import type { Store } from "../../ports/store.ts";

/** Notes in the ledger that something was refused, and whom it was asked by where that is known. Never fails. */
export type NoteRefused = (did: string, about?: string) => Promise<void>;

const MINUTE = 60_000;
/** Refusals that are kept in mind; beyond that all are forgotten, and noted anew. */
const MOST = 10_000;

/**
 * The same refusal of the same person is noted once a minute by each process: the audit shows the attempt, and nobody fills the ledger
 * by trying.
 */
export function openNoteRefused({
  store,
  now,
}: {
  readonly store: Pick<Store, "writeCards">;
  readonly now: Clock;
}): NoteRefused {
  const notedAt = new Map<string, number>();
  return async (did, about) => {
    const at = now();
    const key = `${about ?? ""} ${did}`;
    if (Date.parse(at) - (notedAt.get(key) ?? Number.NEGATIVE_INFINITY) < MINUTE) return;
    if (notedAt.size >= MOST) notedAt.clear();
    notedAt.set(key, Date.parse(at));
    const deed = { by: "program", at, did, ...(about === undefined ? {} : { about }) };
    // What was refused stays so, also where it cannot be noted: a store that is full or locked says so itself.
    await store.writeCards({ deed });
  };
}
