import type { Card, CardWrite } from "../card.ts";
import type { Role } from "./caller.ts";

/** Leave to make an account, once. Its card's id is the hash of what the link holds. */
export interface Invitation {
  readonly role: Role;
  /** Who gave it; `program` for the one that the first owner comes in by. */
  readonly by: string;
  /** ISO 8601 times in UTC. */
  readonly madeAt: string;
  readonly until: string;
  /** Holds only as long as there is no owner. */
  readonly first?: true;
  /** Whose account it begins anew; it makes no other. */
  readonly person?: string;
}
export const INVITATION_CARD = "invitation";
/** Days that an invitation holds, and hours for that of the first owner. */
export const INVITATION_DAYS = 7;
export const FIRST_OWNER_HOURS = 24;

export const invitationOf = ({ body }: Card): Invitation => body as Invitation;

export const invitationWrite = (id: string, invitation: Invitation): CardWrite => ({
  ...{ kind: INVITATION_CARD, id, expectedVersion: 0 },
  next: {
    keys: {
      by: [invitation.by],
      ...(invitation.person === undefined ? {} : { person: [invitation.person] }),
    },
    body: invitation,
  },
});

/** One card that every change among the owners goes through, so that no two can leave the house without one. */
export const OWNERS_CARD = { kind: "house", id: "owners" } as const;
