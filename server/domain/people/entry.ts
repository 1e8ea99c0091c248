import type { Card, CardWrite } from "../card.ts";

/**
 * How often all that somebody was signed in with was ended at once. Whatever ends it, and whatever makes something new that lets in,
 * writes this one card, so that nothing that was begun before an end is kept after it.
 */
export interface Entry {
  readonly ended: number;
  /** ISO 8601 time in UTC of the last time; left out, never. */
  readonly at?: string;
}
/** With the version of its card, 0 where there is none yet. */
export type KeptEntry = Entry & { readonly version: number };

/** Its card's id is the person's. */
export const ENTRY_CARD = "entry";

/** What a card says, or that it never ended where there is none; one that says nothing sound lets in nothing of before. */
export function entryOf(card: Card | undefined): KeptEntry {
  if (card === undefined) return { version: 0, ended: 0 };
  const { ended, at } = (card.body ?? {}) as Partial<Record<keyof Entry, unknown>>;
  return {
    version: card.version,
    ended: Number.isSafeInteger(ended) ? (ended as number) : card.version,
    ...(typeof at === "string" ? { at } : {}),
  };
}

const entryWrite = (person: string, expectedVersion: number, entry: Entry): CardWrite => ({
  ...{ kind: ENTRY_CARD, id: person, expectedVersion },
  next: { keys: {}, body: entry },
});

/** Ends all that somebody was signed in with before. */
export const endingEntry = (person: string, { version, ended }: KeptEntry, at: string): CardWrite =>
  entryWrite(person, version, { ended: ended + 1, at });

/** Keeps what is written beside it only if nothing was ended or made meanwhile. */
export const holdingEntry = (person: string, { version, ...entry }: KeptEntry): CardWrite =>
  entryWrite(person, version, entry);

/** Whether a way that somebody began at a time was ended since, as far as clocks tell. */
export const isEndedSince = ({ at }: Entry, begunAt: string): boolean => at !== undefined && begunAt <= at;
