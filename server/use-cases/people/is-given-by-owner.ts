import type { Invitation } from "../../domain/people/invitation.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import type { PeoplePorts } from "./people-ports.ts";

/** Whether whoever gave a link is an owner still: with the right to give one, what was given goes. The program's own hold. */
export async function isGivenByOwner(
  { store }: Pick<PeoplePorts, "store">,
  { by }: Pick<Invitation, "by">,
): Promise<boolean> {
  if (by === "program") return true;
  const card = await store.card(PERSON_CARD, by);
  const giver = card && personOf(card);
  return giver?.state === "active" && giver.role === "owner";
}
