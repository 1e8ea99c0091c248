import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { GraphView, Standing } from "../../domain/graph-view.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import type { Database } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { parseStored } from "./parse-stored.ts";
import type { Kind } from "./read-things.ts";

const KINDS: readonly Kind[] = ["term", "claim", "source"];

/** Terms by id as they were read; `undefined` for an id that is none. */
export type TermsRead = Map<string, Term | undefined>;

/**
 * The graph as it stands, looked up where it is asked for by a check of a change; terms, which many claims name, once, and
 * kept in `terms`. Inside a read or write.
 */
export function standingView(database: Database, change: Change, terms: TermsRead = new Map()): GraphView {
  let added: Readonly<Record<Kind, ReadonlySet<string>>> | undefined;
  const findText = (kind: Kind, id: string): string | undefined =>
    database.get<{ body: string }>(`SELECT body FROM ${kind} WHERE id = :id AND until = :stands`, {
      id,
      stands: STILL_STANDS,
    })?.body;
  const find = <Thing>(kind: Kind, id: string): Thing | undefined => {
    const body = findText(kind, id);
    return body === undefined ? undefined : parseStored<Thing>(body);
  };
  const findTerm = (id: string): Term | undefined => {
    if (!terms.has(id)) terms.set(id, find<Term>("term", id));
    return terms.get(id);
  };
  const namersOfKind = (by: Kind, kind: Kind, named: string): readonly Standing[] =>
    database
      .all<{ body: string }>(
        `SELECT thing.body FROM naming CROSS JOIN ${by} AS thing ON thing.row = naming.row
          WHERE naming.kind = :kind AND naming.named = :named AND naming.by = :by AND thing.until = :stands
          ORDER BY thing.id`,
        { kind, named, by, stands: STILL_STANDS },
      )
      .map(({ body }) => ({ kind: by, thing: parseStored(body) }) as Standing);
  return {
    stands: (kind, id, text) => {
      if (text !== undefined) return findText(kind, id) === text;
      added ??= addedAgain(database, change);
      return !added[kind].has(id);
    },
    findTerm,
    findClaim: (id) => find<Claim>("claim", id),
    findSource: (id) => find<Source>("source", id),
    namersOf: (kind, id) => KINDS.flatMap((by) => namersOfKind(by, kind, id)),
  };
}

/** Ids that a change adds although they stand, looked up at once: one by one would take several times as long. */
function addedAgain(database: Database, change: Change): Readonly<Record<Kind, ReadonlySet<string>>> {
  const idsOf = (kind: Kind): ReadonlySet<string> => {
    const ids = change.flatMap((edit) =>
      edit.kind === kind && edit.before === undefined && edit.after !== undefined ? [edit.after.id] : [],
    );
    if (ids.length === 0) return new Set();
    const rows = database.all<{ id: string }>(
      `SELECT thing.id FROM json_each(:ids) AS asked CROSS JOIN ${kind} AS thing
        WHERE thing.id = asked.value AND thing.until = :stands`,
      { ids: JSON.stringify(ids), stands: STILL_STANDS },
    );
    return new Set(rows.map(({ id }) => id));
  };
  return { term: idsOf("term"), claim: idsOf("claim"), source: idsOf("source") };
}
