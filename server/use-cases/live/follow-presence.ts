import { id } from "../../domain/ids.ts";
import { noExamination } from "../../domain/next-version.ts";
import { type Caller, sharesTheHouse } from "../../domain/people/caller.ts";
import { ACCESS_CARD, isShown } from "../../domain/people/examination-access.ts";
import { mayDo } from "../../domain/people/may-do.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { orStopped } from "../../ports/or-stopped.ts";
import type { Doing, Presence, Present } from "../../ports/presence.ts";
import type { Store } from "../../ports/store.ts";
import { hiddenFrom } from "../people/hidden-from.ts";
import { NewsEnded } from "./follow-news.ts";

/** Somebody else at the same piece, or oneself in another window. */
export interface Other extends Doing {
  readonly isYou: boolean;
  /** Left out where one may not see who it is, and where there are no accounts. */
  readonly name?: string;
}
export interface Others {
  /** Those who are told of one by one, who edit first. */
  readonly others: readonly Other[];
  readonly count: number;
}
interface Ports {
  readonly store: Store;
  readonly presence: Presence;
  readonly caller: Caller | undefined;
  readonly connection?: object;
}

/** How many are told of one by one. */
const MOST_TOLD = 8;
/** Milliseconds between two tellings: many who come at once are told of together. */
const REST = 250;

/**
 * Is there, doing that, as long as it is followed; tells who else is, at once and at each change. Where the piece is not shown to the
 * caller it is as at a piece that there is not: nobody else is there. It ends once it is shown no more.
 */
export async function* followPresence(
  ports: Ports,
  examination: string,
  doing: Doing,
  stop: AbortSignal,
): AsyncGenerator<Others> {
  const { caller, presence } = ports;
  const problem = mayDo(caller, "read an examination");
  if (problem !== undefined || caller === undefined) throw problem && new NewsEnded(problem);
  const isApart = (await hiddenFrom(ports.store, caller, [examination])).size > 0;
  const room = isApart ? `${examination} ${caller.id}` : examination;
  const place = presence.enter(room, { person: caller.id, ...doing }, ports.connection);
  try {
    while (!stop.aborted) {
      const there = place.others();
      const isSeenBy = isApart ? () => true : await whoSees(ports, caller, examination);
      if (!isSeenBy(caller.id)) throw new NewsEnded(noExamination(id(examination)));
      // Who may see it no more is there no more, also before that one is told so.
      const others = there.filter(({ person }) => isSeenBy(person));
      yield await read(ports, caller, others);
      await rest(stop);
      await place.changed(stop);
    }
  } finally {
    place.leave();
  }
}

/** Tells whether a person sees the examination at this moment. */
async function whoSees({ store }: Ports, caller: Caller, examination: string) {
  if (!sharesTheHouse(caller)) return () => true;
  const card = (await store.cards(ACCESS_CARD, [examination])).get(examination);
  return (person: string): boolean => isShown(card, { id: person });
}

async function read({ store }: Ports, caller: Caller, present: readonly Present[]): Promise<Others> {
  const first = [...present].sort((a, b) => Number(b.isEditing) - Number(a.isEditing)).slice(0, MOST_TOLD);
  const maySee = mayDo(caller, "see the people") === undefined;
  const cards = await store.cards(PERSON_CARD, maySee ? first.map(({ person }) => person) : []);
  const others = first.map(({ person, ...doing }): Other => {
    const card = cards.get(person);
    const name = card && personOf(card)?.name;
    return { ...doing, isYou: person === caller.id, ...(name === undefined ? {} : { name }) };
  });
  return { others, count: present.length };
}

const rest = (stop: AbortSignal): Promise<void> =>
  orStopped(new Promise((resolve) => setTimeout(resolve, REST)), stop);
