import type { Card, CardWrite } from "../card.ts";
import type { Caller } from "./caller.ts";
import { maySee } from "./may-do.ts";

/** Who sees an examination; one without such a card is seen by the whole house. */
export interface ExaminationAccess {
  /** The person who recorded it, and says who sees it. */
  readonly by: string;
  /** Persons who see it besides; `house` is everybody. */
  readonly seenBy: readonly string[];
}

/** The kind of the cards that say who sees an examination; each has its id. */
export const ACCESS_CARD = "examination-access";
/** Stands for everybody among those who see something. */
export const WHOLE_HOUSE = "house";
/** Persons that one examination can be shown to besides. */
export const MOST_SHOWN_TO = 50;
/** Found by these: all that are kept from somebody and stand in the lists, and those of them that a person sees. */
export const KEPT = { name: "kept", value: "yes" };
export const keptButSeenBy = (person: string) => ({ name: "seen", value: person });

/** What a card says; one that says nothing sound shows the examination to nobody. */
export function accessOf({ body }: Card): ExaminationAccess {
  const { by, seenBy } = (body ?? {}) as Partial<Record<keyof ExaminationAccess, unknown>>;
  if (typeof by !== "string" || !Array.isArray(seenBy)) return { by: "", seenBy: [] };
  return { by, seenBy: seenBy.filter((each) => typeof each === "string") };
}

/** The card that says from now on who sees an examination; one that is deleted is found by no key, as it is in no list. */
export function accessWrite(
  id: string,
  expectedVersion: number,
  access: ExaminationAccess,
  isListed = true,
): CardWrite {
  const { by, seenBy } = access;
  const keys =
    isListed && isKept(access) ? { [KEPT.name]: [KEPT.value], seen: [...new Set([by, ...seenBy])] } : {};
  return { kind: ACCESS_CARD, id, expectedVersion, next: { keys, body: access } };
}

/** Whether it is kept from anybody. */
export const isKept = ({ seenBy }: ExaminationAccess): boolean => !seenBy.includes(WHOLE_HOUSE);

/** Whether an examination with this card, or with none, is shown to somebody. */
export const isShown = (card: Card | undefined, person: Pick<Caller, "id">): boolean =>
  card === undefined || maySee(person, accessOf(card));
