import type { Card } from "../../domain/card.ts";
import { ENTRY_CARD, entryOf } from "../../domain/people/entry.ts";
import { INVITATION_CARD, invitationOf } from "../../domain/people/invitation.ts";
import { isInTime, SESSION_CARD, sessionOf, wasEnded } from "../../domain/people/session.ts";
import { TOKEN_CARD, tokenOf } from "../../domain/people/token.ts";
import { isForgotten, TROUBLE_CARD, type Trouble } from "../../domain/people/trouble.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Store } from "../../ports/store.ts";
import { later } from "./people-ports.ts";

/** Cards of one kind that are looked at, and at most taken away, in one turn. */
export const SWEPT_AT_ONCE = 200;
/** Milliseconds that what ends by time is still kept, so that a clock that is wrong for a while takes nothing. */
export const KEPT_AFTER = 7 * 24 * 3_600_000;

type Ports = { readonly store: Pick<Store, "listCards" | "cards" | "writeCards">; readonly now: Clock };
/** Which of the cards of a page have ended. */
type FindEnded = (ports: Ports, cards: readonly Card[]) => Promise<readonly Card[]>;

const before = ({ now }: Ports): string => later(now(), -KEPT_AFTER);

const ENDED: Readonly<Record<string, FindEnded>> = {
  [SESSION_CARD]: async (ports, cards) => {
    const persons = [...new Set(cards.map((card) => sessionOf(card).person))];
    const entries = await ports.store.cards(ENTRY_CARD, persons);
    return cards.filter((card) => {
      const session = sessionOf(card);
      return wasEnded(session, entryOf(entries.get(session.person))) || !isInTime(session, before(ports));
    });
  },
  [TOKEN_CARD]: async (ports, cards) => cards.filter((card) => tokenOf(card).until <= before(ports)),
  [INVITATION_CARD]: async (ports, cards) =>
    cards.filter((card) => invitationOf(card).until <= before(ports)),
  [TROUBLE_CARD]: async ({ now }, cards) => cards.filter(({ body }) => isForgotten(body as Trouble, now())),
};

/**
 * Takes away what lets nobody in any more: sessions, tokens and links that have ended, failures that are forgotten. Each turn looks at
 * one page of each kind and goes on from there in the next; it gives how many it took away. Several processes may do it: what another
 * took away or changed meanwhile waits for the next time.
 */
export function openSweep(ports: Ports): () => Promise<number> {
  const at = new Map<string, string>();
  const sweep = async (kind: string, findEnded: FindEnded): Promise<number> => {
    const after = at.get(kind);
    const asked = { first: SWEPT_AT_ONCE, ...(after === undefined ? {} : { after }) };
    const page = await ports.store.listCards({ kind }, asked);
    const last = page.cursors.at(-1);
    if (page.hasMore && last !== undefined) at.set(kind, last);
    else at.delete(kind);
    const cards = (await findEnded(ports, page.rows)).map(({ id, version }) => ({
      ...{ kind, id, expectedVersion: version },
    }));
    if (cards.length === 0) return 0;
    const deed = { by: "program", at: ports.now(), did: "sweep what has ended" };
    return isProblem(await ports.store.writeCards({ cards, deed })) ? 0 : cards.length;
  };
  return async () => {
    let swept = 0;
    for (const [kind, findEnded] of Object.entries(ENDED)) swept += await sweep(kind, findEnded);
    return swept;
  };
}
