import { writeCards } from "../../chain/write-cards.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Card, CardKeys, CardWrite } from "../../domain/card.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { Problem } from "../../domain/problem.ts";
import type { WrittenCard } from "../../domain/written.ts";
import type { CardFilter, Page, PageAsk } from "../../ports/store.ts";
import type { Database } from "./database.ts";
import { parseStored } from "./parse-stored.ts";
import { checkFirst } from "./read-things.ts";

export interface CardRow {
  readonly kind: string;
  readonly id: string;
  readonly version: number;
  readonly keys: string;
  readonly body: string;
}

/** A row as the domain has it. */
export const cardOf = ({ keys, body, kind, id, version }: CardRow): Card =>
  deepFreeze({ kind, id, version, keys: parseStored<CardKeys>(keys), body: parseStored<unknown>(body) });

/** One card. */
export function findCard(database: Database, kind: string, id: string): Card | undefined {
  const row = database.get<CardRow>("SELECT * FROM card WHERE kind = :kind AND id = :id", { kind, id });
  return row && cardOf(row);
}

/** Those of these that are there, by id. */
export function findCards(
  database: Database,
  kind: string,
  ids: readonly string[],
): ReadonlyMap<string, Card> {
  const rows = database.all<CardRow>(
    `SELECT card.* FROM (SELECT DISTINCT value AS id FROM json_each(:ids)) AS asked
      CROSS JOIN card ON card.kind = :kind AND card.id = asked.id ORDER BY card.id`,
    { kind, ids: JSON.stringify(ids) },
  );
  return new Map(rows.map((row) => [row.id, cardOf(row)]));
}

/** A page of those that a filter admits. */
export function listCards(
  database: Database,
  { kind, key }: CardFilter,
  page: PageAsk,
  order: "up" | "down",
): Page<Card> {
  const first = checkFirst(page.first);
  const [from, where, named] =
    key === undefined
      ? ["card AS found", "found.kind = :kind", {}]
      : [
          "card_key AS found",
          "found.kind = :kind AND found.name = :name AND found.value = :value",
          { name: key.name, value: key.value },
        ];
  const [after, direction] = order === "up" ? [">", "ASC"] : ["<", "DESC"];
  const rows = database.all<CardRow>(
    `SELECT card.* FROM ${from} CROSS JOIN card ON card.kind = found.kind AND card.id = found.id
      WHERE ${where} AND (:fromTop OR found.id ${after} :after)
      ORDER BY found.id ${direction} LIMIT :limit`,
    { kind, ...named, fromTop: Number(page.after === undefined), after: page.after ?? "", limit: first + 1 },
  );
  const total = database.get<{ total: number }>(`SELECT count(*) AS total FROM ${from} WHERE ${where}`, {
    kind,
    ...named,
  });
  const shown = rows.slice(0, first).map(cardOf);
  return {
    rows: shown,
    cursors: shown.map(({ id }) => id),
    hasMore: rows.length > first,
    total: total?.total ?? 0,
  };
}

/** Writes some cards, or says why not. Inside a write. */
export const putCards = (
  database: Database,
  writes: readonly CardWrite[],
): readonly WrittenCard[] | Problem =>
  writeCards(writes, {
    find: (kind, id) => findCard(database, kind, id),
    put: ({ kind, id }, card) => {
      database.run("DELETE FROM card_key WHERE kind = :kind AND id = :id", { kind, id });
      database.run("DELETE FROM card WHERE kind = :kind AND id = :id", { kind, id });
      if (card !== undefined) addCard(database, card);
    },
  });

/** Adds a card that is not there yet. Inside a write. */
export function addCard(database: Database, { kind, id, version, keys, body }: Card): void {
  database.run(
    "INSERT INTO card (kind, id, version, keys, body) VALUES (:kind, :id, :version, :keys, :body)",
    { kind, id, version, keys: canonicalJson(keys), body: canonicalJson(body) },
  );
  for (const [name, values] of Object.entries(keys))
    for (const value of new Set(values))
      database.run("INSERT INTO card_key (kind, name, value, id) VALUES (:kind, :name, :value, :id)", {
        ...{ kind, name, value, id },
      });
}
