import { afterFailure, secondsToWait, TROUBLE_CARD, type Trouble } from "../../domain/people/trouble.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import type { PeoplePorts } from "./people-ports.ts";

/** Tries that are made at the same time are all counted. */
const COUNTED_AGAIN = 30;

export const tryLater = (seconds: number): Problem =>
  problem("TRY_LATER", `Too many tries. Try again in ${seconds} ${seconds === 1 ? "second" : "seconds"}.`);

/** The card of somebody's failures, with the seconds to wait for them. */
export async function troubleOf({ store, now }: Pick<PeoplePorts, "store" | "now">, person: string) {
  const card = await store.card(TROUBLE_CARD, person);
  return { card, wait: secondsToWait(card?.body as Trouble | undefined, now()) };
}

/** Counts that somebody's password or code was wrong. */
export async function noteFailure(
  { store, now }: Pick<PeoplePorts, "store" | "now">,
  person: string,
  did: string,
): Promise<void> {
  const at = now();
  for (let again = 0; again < COUNTED_AGAIN; again++) {
    const { card } = await troubleOf({ store, now }, person);
    const next = { keys: {}, body: afterFailure(card?.body as Trouble | undefined, at) };
    const write = { kind: TROUBLE_CARD, id: person, expectedVersion: card?.version ?? 0, next };
    const written = await store.writeCards({
      cards: [write],
      deed: { by: "program", at, did, about: person },
    });
    if (!isProblem(written) || written.code !== "CHANGED_MEANWHILE") return;
  }
}
