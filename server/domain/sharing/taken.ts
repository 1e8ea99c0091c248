import type { CardWrite } from "../card.ts";

/** The kind of the cards that say what was proposed of another house; there is one for each house and change. */
export const TAKEN_CARD = "taken";

/** The card that lets the same be proposed once. Its `id` is a hash of the house and the change. */
export const takenWrite = (id: string): CardWrite => ({
  ...{ kind: TAKEN_CARD, id, expectedVersion: 0 },
  next: { keys: {}, body: {} },
});
