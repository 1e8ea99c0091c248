import type { CardWrite } from "../../domain/card.ts";
import type { Deed } from "../../domain/deed.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Written } from "../../domain/written.ts";
import type { Store } from "../../ports/store.ts";
import { isRefusal, type Refusal } from "../refusal.ts";

/** The cards of a write, or why there is none. */
export type Composed = readonly CardWrite[] | Refusal;

/** Times that a write is made anew; beyond that whoever asks is told to. */
const MOST_TIMES = 20;

/**
 * Writes the cards that follow from how things stand, and makes them anew from how they stand then where one of these kinds was changed
 * meanwhile. Of any other kind the caller is told `CHANGED_MEANWHILE`, as after the last time.
 */
export async function writeAnew(
  store: Pick<Store, "writeCards">,
  deed: Deed,
  kinds: readonly string[],
  compose: () => Promise<Composed>,
): Promise<Written | Refusal> {
  for (let time = 1; ; time++) {
    const cards = await compose();
    if (isRefusal(cards)) return cards;
    const written = await store.writeCards({ cards, deed });
    if (!isProblem(written)) return written;
    if (time === MOST_TIMES || !isMeanwhile(written, kinds)) return { refused: [written] };
  }
}

/** Whether a write was refused because a card of one of these kinds was changed meanwhile. */
const isMeanwhile = ({ code, path }: Problem, kinds: readonly string[]): boolean =>
  code === "CHANGED_MEANWHILE" && path[0] === "cards" && kinds.includes(String(path[1]));
