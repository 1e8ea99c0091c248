import type { Role } from "../../domain/people/caller.ts";
import {
  FIRST_OWNER_HOURS,
  INVITATION_DAYS,
  invitationWrite,
  OWNERS_CARD,
} from "../../domain/people/invitation.ts";
import { isProblem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import type { Refusal } from "../refusal.ts";
import { later, type PeoplePorts } from "./people-ports.ts";
import { makeSalt } from "./sign-in-card.ts";

export interface Invited {
  /** What the link holds; told this once. */
  readonly secret: string;
  readonly until: string;
}

/** Gives leave to make one account with a role. */
export async function invite(ports: PeoplePorts, role: Role): Promise<Invited | Refusal> {
  const refusal = refuseCaller(ports, "manage people");
  if (refusal) return refusal;
  const along = signed(ports, "invite");
  const { by, at } = along.deed;
  const secret = ports.secrets.newSecret();
  const until = later(at, INVITATION_DAYS * 24 * 3_600_000);
  const cards = [invitationWrite(ports.secrets.hash(secret), { role, by, madeAt: at, until })];
  const written = await ports.store.writeCards({ ...along, cards });
  return isProblem(written) ? { refused: [written] } : { secret, until };
}

/** At a start: the secret by which the first owner comes in, if there is none yet. */
export async function inviteFirstOwner(
  ports: Omit<PeoplePorts, "caller">,
): Promise<Invited | Refusal | undefined> {
  const salted = await makeSalt(ports);
  if (isProblem(salted) && salted.code !== "CHANGED_MEANWHILE") return { refused: [salted] };
  if (await ports.store.card(OWNERS_CARD.kind, OWNERS_CARD.id)) return undefined;
  const at = ports.now();
  const secret = ports.secrets.newSecret();
  const until = later(at, FIRST_OWNER_HOURS * 3_600_000);
  const card = invitationWrite(ports.secrets.hash(secret), {
    ...{ role: "owner", by: "program", madeAt: at, until, first: true },
  });
  const deed = { by: "program", at, did: "invite first owner" };
  const written = await ports.store.writeCards({ cards: [card], deed });
  return isProblem(written) ? { refused: [written] } : { secret, until };
}
