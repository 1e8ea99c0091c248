import { writeCards } from "../../chain/write-cards.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Card, CardKeys, CardWrite } from "../../domain/card.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { WrittenCard } from "../../domain/written.ts";
import type { CardFilter, Page, PageAsk } from "../../ports/store.ts";
import type { Database, Run } from "./database.ts";
import { checkFirst } from "./read-at.ts";

interface CardNode {
  readonly kind: string;
  readonly id: string;
  readonly version: number;
  readonly keys: string;
  readonly body: string;
}
const CARD_NODE = "c {.kind, .id, .version, .keys, .body} AS found";
const AT_ONCE = 1_000;

const cardOf = ({ kind, id, version, keys, body }: CardNode): Card =>
  deepFreeze({ kind, id, version, keys: JSON.parse(keys) as CardKeys, body: JSON.parse(body) as unknown });

/** Inside a write or outside. */
type Ask = Database["read"] | Run;

/** Those of these that are there, by id. */
export async function findCards(
  ask: Ask,
  kind: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, Card>> {
  const rows = await ask<{ found: CardNode }>(
    `UNWIND $ids AS id MATCH (c:Card {store: $store, kind: $kind, id: id}) RETURN ${CARD_NODE} ORDER BY c.id`,
    { kind, ids: [...new Set(ids)] },
  );
  return new Map(rows.map(({ found }) => [found.id, cardOf(found)]));
}

/** Every card, by kind and id. */
export async function* allCards(ask: Ask): AsyncGenerator<Card> {
  for (let [kind, id] = ["", ""], isMore = true; isMore; ) {
    const rows = await ask<{ found: CardNode }>(
      `MATCH (c:Card {store: $store}) WHERE c.kind >= $kind AND (c.kind > $kind OR c.id > $id)
       RETURN ${CARD_NODE} ORDER BY c.kind, c.id LIMIT $limit`,
      { kind, id, limit: AT_ONCE },
    );
    for (const { found } of rows) yield cardOf(found);
    ({ kind, id } = rows.at(-1)?.found ?? { kind, id });
    isMore = rows.length === AT_ONCE;
  }
}

/** A page of those that a filter admits. */
export async function listCards(
  database: Database,
  { kind, key }: CardFilter,
  page: PageAsk,
  order: "up" | "down",
): Promise<Page<Card>> {
  const first = checkFirst(page.first);
  const among =
    key === undefined
      ? "(k:Card {store: $store, kind: $kind})"
      : "(k:CardKey {store: $store, kind: $kind, name: $name, value: $value})";
  const [after, direction] = order === "up" ? [">", ""] : ["<", "DESC"];
  const [row] = await database.read<{ total: number; rows: readonly CardNode[] }>(
    `CALL () { MATCH ${among} RETURN count(k) AS total }
     CALL () {
       MATCH ${among} WHERE $fromTop OR k.id ${after} $after
       WITH k.id AS id ORDER BY id ${direction} LIMIT $limit
       MATCH (c:Card {store: $store, kind: $kind, id: id})
       WITH c ORDER BY c.id ${direction}
       RETURN collect(c {.kind, .id, .version, .keys, .body}) AS rows
     }
     RETURN total, rows`,
    { kind, ...key, fromTop: page.after === undefined, after: page.after ?? "", limit: first + 1 },
  );
  const { total, rows } = row ?? { total: 0, rows: [] };
  const shown = rows.slice(0, first).map(cardOf);
  return { rows: shown, cursors: shown.map(({ id }) => id), hasMore: rows.length > first, total };
}

/** What some writes are going to put, and what the ledger will say of them. */
export interface PlannedCards {
  readonly puts: ReadonlyMap<string, { readonly kind: string; readonly id: string; readonly card?: Card }>;
  readonly written: readonly WrittenCard[];
}
export const NO_CARDS: PlannedCards = { puts: new Map(), written: [] };

/** Looks whether some cards can be written. Inside a write that holds the store. */
export async function planCards(run: Run, writes: readonly CardWrite[]): Promise<PlannedCards | Problem> {
  if (writes.length === 0) return NO_CARDS;
  const standing = new Map<string, Card>();
  for (const kind of new Set(writes.map((write) => write.kind))) {
    const ids = writes.filter((write) => write.kind === kind).map(({ id }) => id);
    for (const card of (await findCards(run, kind, ids)).values()) standing.set(keyOf(card), card);
  }
  const puts = new Map<string, { kind: string; id: string; card?: Card }>();
  const written = writeCards(writes, {
    find: (kind, id) =>
      puts.has(keyOf({ kind, id })) ? puts.get(keyOf({ kind, id }))?.card : standing.get(keyOf({ kind, id })),
    put: ({ kind, id }, card) => puts.set(keyOf({ kind, id }), { kind, id, ...(card ? { card } : {}) }),
  });
  return isProblem(written) ? written : { puts, written };
}

/** Puts what was planned. Inside the same write. */
export async function putCards(run: Run, { puts }: PlannedCards): Promise<void> {
  const all = [...puts.values()];
  for (let at = 0; at < all.length; at += AT_ONCE) {
    const some = all.slice(at, at + AT_ONCE);
    await run(
      `UNWIND $gone AS gone
       OPTIONAL MATCH (k:CardKey {store: $store, kind: gone.kind, card: gone.id})
       DELETE k`,
      { gone: some.map(({ kind, id }) => ({ kind, id })) },
    );
    await run("UNWIND $gone AS gone MATCH (c:Card {store: $store, kind: gone.kind, id: gone.id}) DELETE c", {
      gone: some.filter(({ card }) => card === undefined).map(({ kind, id }) => ({ kind, id })),
    });
    const cards = some.flatMap(({ card }) => card ?? []);
    await run(
      `UNWIND $cards AS card MERGE (c:Card {store: $store, kind: card.kind, id: card.id})
       SET c.version = card.version, c.keys = card.keys, c.body = card.body`,
      { cards: cards.map(cardNode) },
    );
    await run("UNWIND $keys AS key CREATE (k:CardKey {store: $store}) SET k += key", {
      keys: cards.flatMap(cardKeyNodes),
    });
  }
}

const keyOf = ({ kind, id }: { readonly kind: string; readonly id: string }): string => `${kind} ${id}`;

/** The properties of the node of a card. */
export const cardNode = ({ kind, id, version, keys, body }: Card): CardNode => ({
  ...{ kind, id, version },
  ...{ keys: canonicalJson(keys), body: canonicalJson(body) },
});

/** The properties of the nodes that a card is found by; `card` repeats its id for the way back. */
export const cardKeyNodes = ({ kind, id, keys }: Card): readonly object[] =>
  Object.entries(keys).flatMap(([name, values]) =>
    [...new Set(values)].map((value) => ({ kind, name, value, id, card: id })),
  );
