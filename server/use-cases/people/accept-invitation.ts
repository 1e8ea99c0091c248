import type { CardWrite } from "../../domain/card.ts";
import { INVITATION_CARD, invitationOf, OWNERS_CARD } from "../../domain/people/invitation.ts";
import { judgePassword } from "../../domain/people/judge-password.ts";
import { personWrite } from "../../domain/people/person.ts";
import { sessionWrite } from "../../domain/people/session.ts";
import { readShownName, readSignInName } from "../../domain/people/sign-in-name.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { isGivenByOwner } from "./is-given-by-owner.ts";
import { tryLater } from "./note-failure.ts";
import type { SignedIn } from "./open-session.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { findByName, nameWrite, passwordWrite } from "./sign-in-card.ts";

export interface Accepted {
  /** What the link holds. */
  readonly secret: string;
  readonly signInName: string;
  readonly name: string;
  readonly password: string;
}

const usedUp = problem(
  "LINK_USED_UP",
  "This invitation holds no more: it was used, or is too old. Ask an owner of the house for another.",
);

/** Makes an account of an invitation, and signs it in. An invitation serves once. */
export async function acceptInvitation(ports: PeoplePorts, accepted: Accepted): Promise<SignedIn | Refusal> {
  const { store, secrets } = ports;
  const at = ports.now();
  const card = await store.card(INVITATION_CARD, secrets.hash(accepted.secret));
  const owners = await store.card(OWNERS_CARD.kind, OWNERS_CARD.id);
  const invitation = card && invitationOf(card);
  if (
    card === undefined ||
    invitation === undefined ||
    invitation.person !== undefined ||
    invitation.until <= at ||
    (invitation.first && owners) ||
    !(await isGivenByOwner(ports, invitation))
  )
    return { refused: [usedUp] };
  const signInName = readSignInName(accepted.signInName);
  const name = readShownName(accepted.name);
  const weak = judgePassword(
    accepted.password,
    [accepted.signInName, accepted.name].map((one) => one.trim()),
    secrets.isCommonPassword,
  );
  const taken =
    isProblem(signInName) || (await findByName(ports, signInName)) === undefined ? [] : [nameTaken()];
  const refusal = refusalFrom([signInName, name, weak, ...taken].filter(isProblem));
  if (refusal || isProblem(signInName) || isProblem(name)) return refusal ?? { refused: [usedUp] };
  const phc = await secrets.hashPassword(accepted.password);
  if (phc === "busy") return { refused: [tryLater(5)] };
  const person = `person.${ports.newSuffix()}`;
  const secret = secrets.newSecret();
  const cards: CardWrite[] = [
    { kind: INVITATION_CARD, id: card.id, expectedVersion: card.version },
    personWrite(person, 0, { name, role: invitation.role, state: "active" }),
    await nameWrite(ports, signInName, person),
    passwordWrite(person, 0, phc),
    sessionWrite(secrets.hash(secret), 0, { person, madeAt: at, seenAt: at, steps: 1, ended: 0 }),
  ];
  if (invitation.role === "owner")
    cards.push({ ...OWNERS_CARD, expectedVersion: owners?.version ?? 0, next: { keys: {}, body: {} } });
  const written = await store.writeCards({ cards, deed: { by: person, at, did: "accept invitation" } });
  if (!isProblem(written)) return { person, secret };
  return { refused: [written.code === "CHANGED_MEANWHILE" ? usedUp : written] };
}

const nameTaken = (): Problem =>
  problem("NAME_TAKEN", "Somebody here signs in with this name already. Take another.", ["signInName"]);
