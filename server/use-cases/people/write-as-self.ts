import type { Card, CardWrite } from "../../domain/card.ts";
import type { Deed } from "../../domain/deed.ts";
import { ENTRY_CARD, endingEntry, entryOf, type KeptEntry } from "../../domain/people/entry.ts";
import { isLive, SESSION_CARD, sessionOf, sessionWrite } from "../../domain/people/session.ts";
import { problem } from "../../domain/problem.ts";
import type { Written } from "../../domain/written.ts";
import type { Refusal } from "../refusal.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { type Composed, writeAnew } from "./write-anew.ts";

/** Whoever asks by a session, as both stand. */
export interface Self {
  readonly person: string;
  readonly entry: KeptEntry;
  readonly session: Card;
}

/**
 * Writes what changes how one gets in oneself, as long as the session that asks still holds when it is kept. `compose` gives the cards,
 * one of which is that of `entry`: so nothing is kept that was begun before all was ended. It is called again where a request that went on
 * at the same time noted the session, or wrote that card.
 */
export const writeAsSelf = (
  ports: PeoplePorts,
  deed: Deed,
  compose: (self: Self) => Promise<Composed> | Composed,
): Promise<Written | Refusal> =>
  writeAnew(ports.store, deed, [ENTRY_CARD, SESSION_CARD], async () => {
    const { store, caller, here } = ports;
    if (caller === undefined || here === undefined) return ended;
    const entry = entryOf(await store.card(ENTRY_CARD, caller.id));
    const session = await store.card(SESSION_CARD, here);
    if (session === undefined || !isLive(sessionOf(session), entry, ports.now())) return ended;
    return compose({ person: caller.id, entry, session });
  });

/** Ends all other sessions; the one that asks goes on, with these steps. */
export function endOthers({ person, entry, session }: Self, at: string, steps?: 1 | 2): readonly CardWrite[] {
  const { id, version } = session;
  const before = sessionOf(session);
  return [
    endingEntry(person, entry, at),
    sessionWrite(id, version, { ...before, steps: steps ?? before.steps, ended: entry.ended + 1 }),
  ];
}

const ended: Refusal = {
  refused: [problem("NOT_SIGNED_IN", "This session has ended meanwhile. Sign in again.")],
};
