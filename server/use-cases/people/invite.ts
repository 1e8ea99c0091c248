import type { Role } from "../../domain/people/caller.ts";
import {
  FIRST_OWNER_HOURS,
  INVITATION_DAYS,
  invitationWrite,
  OWNERS_CARD,
} from "../../domain/people/invitation.ts";
import { isProblem, problem } from "../../domain/problem.ts";
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
  return inviteOwner(ports, "invite first owner", { first: true });
}

/** By a command on the server's machine: the secret by which somebody becomes an owner where all owners are lost. */
export async function inviteLostOwner(
  ports: Pick<PeoplePorts, "store" | "secrets" | "now">,
): Promise<Invited | Refusal> {
  if ((await ports.store.card(OWNERS_CARD.kind, OWNERS_CARD.id)) === undefined)
    return {
      refused: [
        problem(
          "WRONG_STATE",
          "This house never had an owner: start the server with SCRIBELINE_ACCOUNTS=on, and its log tells a secret.",
        ),
      ],
    };
  return inviteOwner(ports, "let owner in by command", {});
}

async function inviteOwner(
  ports: Pick<PeoplePorts, "store" | "secrets" | "now">,
  did: string,
  more: { readonly first?: true },
): Promise<Invited | Refusal> {
  const at = ports.now();
  const secret = ports.secrets.newSecret();
  const until = later(at, FIRST_OWNER_HOURS * 3_600_000);
  const card = invitationWrite(ports.secrets.hash(secret), {
    ...{ role: "owner", by: "program", madeAt: at, until, ...more },
  });
  const written = await ports.store.writeCards({ cards: [card], deed: { by: "program", at, did } });
  return isProblem(written) ? { refused: [written] } : { secret, until };
}
