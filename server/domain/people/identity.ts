import type { Card, CardWrite } from "../card.ts";

/** Whom another provider calls by a subject, tied to a person here. Never by a name or an address: those are given to others. */
export interface LinkedIdentity {
  readonly person: string;
  readonly issuer: string;
  /** ISO 8601 times in UTC; `lastBegun` is when the newest way that it came by began, and none of then or before is taken again. */
  readonly linkedAt: string;
  readonly lastBegun: string;
}
export const IDENTITY_CARD = "identity";

export const identityOf = ({ body }: Card): LinkedIdentity => body as LinkedIdentity;
export const identityWrite = (id: string, expectedVersion: number, identity: LinkedIdentity): CardWrite => ({
  ...{ kind: IDENTITY_CARD, id, expectedVersion },
  next: { keys: { person: [identity.person] }, body: identity },
});
