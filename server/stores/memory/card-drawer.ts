import { writeCards } from "../../chain/write-cards.ts";
import type { Card, CardWrite } from "../../domain/card.ts";
import { compareIds } from "../../domain/compare.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { WrittenCard } from "../../domain/written.ts";
import type { CardFilter, CardKey, LeftOut, Page, PageAsk } from "../../ports/store.ts";
import { pageOf } from "./page-of.ts";

/** All cards, by kind and id. A value: a write makes a new one. */
export type Cards = ReadonlyMap<string, Card>;

const keyOf = (kind: string, id: string): string => `${kind} ${id}`;

/** These cards as a drawer. */
export const cardsOf = (cards: readonly Card[]): Cards =>
  new Map(cards.map((card) => [keyOf(card.kind, card.id), card]));

/** One card. */
export const findCard = (cards: Cards, kind: string, id: string): Card | undefined =>
  cards.get(keyOf(kind, id));

/** Those of these that are there, by id. */
export const findCards = (cards: Cards, kind: string, ids: readonly string[]): ReadonlyMap<string, Card> =>
  new Map(
    [...ids].sort().flatMap((id) => {
      const card = findCard(cards, kind, id);
      return card === undefined ? [] : [[id, card] as const];
    }),
  );

/** The cards after some writes, with what the ledger says of them. */
export function withCards(
  cards: Cards,
  writes: readonly CardWrite[],
): { readonly cards: Cards; readonly written: readonly WrittenCard[] } | Problem {
  const next = new Map(cards);
  const written = writeCards(writes, {
    find: (kind, id) => findCard(next, kind, id),
    put: ({ kind, id }, card) => {
      if (card === undefined) next.delete(keyOf(kind, id));
      else next.set(keyOf(kind, id), deepFreeze(card));
    },
  });
  return isProblem(written) ? written : { cards: next, written };
}

/** Tells whether a list leaves out what has this id. */
export const leavesOut =
  (cards: Cards, leftOut: LeftOut | undefined) =>
  (id: string): boolean => {
    const keys = leftOut && findCard(cards, leftOut.kind, id)?.keys;
    const has = (key: CardKey | undefined): boolean =>
      key !== undefined && keys !== undefined && (keys[key.name] ?? []).includes(key.value);
    return has(leftOut?.by) && !has(leftOut?.unless);
  };

/** Every card, by kind and id. */
export const allCards = (cards: Cards): readonly Card[] =>
  [...cards.values()].sort((a, b) => (a.kind === b.kind ? compareIds(a, b) : a.kind < b.kind ? -1 : 1));

/** A page of those that a filter admits. */
export function listCards(
  cards: Cards,
  { kind, key }: CardFilter,
  page: PageAsk,
  order: "up" | "down",
): Page<Card> {
  const found = allCards(cards).filter(
    (card) => card.kind === kind && (key === undefined || card.keys[key.name]?.includes(key.value)),
  );
  return order === "up"
    ? pageOf(found, page, ({ id }) => id)
    : pageOf(
        found.toReversed(),
        page,
        ({ id }) => id,
        ({ id }, cursor) => id < cursor,
      );
}
