import type { Card, CardWrite } from "../domain/card.ts";
import { nextCard } from "../domain/next-card.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { WrittenCard } from "../domain/written.ts";
import { noteCard } from "./link-written.ts";

/** Where some cards stand. `put` without a card takes it away. */
export interface CardBox {
  readonly find: (kind: string, id: string) => Card | undefined;
  readonly put: (write: Pick<CardWrite, "kind" | "id">, card: Card | undefined) => void;
}

/**
 * Makes some writes one after the other, and tells what they left for the ledger. At the first that is refused it stops:
 * the caller takes back what was put before.
 */
export function writeCards(
  writes: readonly CardWrite[],
  { find, put }: CardBox,
): readonly WrittenCard[] | Problem {
  const written: WrittenCard[] = [];
  for (const write of writes) {
    const before = find(write.kind, write.id);
    const after = nextCard(before, write);
    if (isProblem(after)) return after;
    if (before === undefined && after === undefined) continue;
    put(write, after);
    written.push(noteCard(before, after));
  }
  return written;
}
