import type { Graph } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import type { Database } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { type Kind, parseBody } from "./read-things.ts";

/** The whole graph as it stands. */
export const readGraph = (database: Database): Graph => ({
  terms: readAll<Term>(database, "term"),
  claims: readAll<Claim>(database, "claim"),
  sources: readAll<Source>(database, "source"),
});

/** All things of one kind as they stand, by id. */
export function readAll<Thing extends { readonly id: string }>(
  database: Database,
  kind: Kind,
): ReadonlyMap<string, Thing> {
  const rows = database.all<{ body: string }>(`SELECT body FROM ${kind} WHERE until = :stands ORDER BY id`, {
    stands: STILL_STANDS,
  });
  return new Map(rows.map(({ body }) => parseBody<Thing>(body)).map((thing) => [thing.id, thing]));
}
