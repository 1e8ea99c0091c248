import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import { type GraphView, idOfEdit, type Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import type { Run } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { KINDS, type Kind, LABELS } from "./version-row.ts";

const IDS_AT_ONCE = 5_000;

/**
 * Checks a change on the graph as it stands, looking up no more than the check asks for. What the edits are about and
 * name is read first; where the check asks for more (what is above a broader term), that is read and it is done again.
 * Of what is not edited the view has no more than what a check asks of it: its kind, what is above it, what it is an
 * exception of.
 */
export async function checkOnStanding<Answer>(
  run: Run,
  change: Change,
  check: (view: GraphView) => Answer,
): Promise<Answer> {
  const known = new Map<string, Standing | undefined>();
  const namers = new Map<string, readonly Standing[]>();
  const edited = new Set(change.map((edit) => keyOf(edit.kind, idOfEdit(edit))));
  const wanted = { things: new Map(firstOf(change)), namers: new Map(withdrawnBy(change)) };
  for (;;) {
    const [whole, named] = [[] as Named[], [] as Named[]];
    for (const [key, thing] of wanted.things) (edited.has(key) ? whole : named).push(thing);
    await readStanding(run, WHOLE, whole, known);
    await readStanding(run, NAMED, named, known);
    for (const [key, thing] of wanted.namers) namers.set(key, await readNamers(run, thing));
    wanted.things.clear();
    wanted.namers.clear();
    const find = (kind: Kind, id: string): Standing["thing"] | undefined => {
      if (!known.has(keyOf(kind, id))) wanted.things.set(keyOf(kind, id), { kind, id });
      return known.get(keyOf(kind, id))?.thing;
    };
    const answer = check({
      findTerm: (id) => find("term", id) as ReturnType<GraphView["findTerm"]>,
      findClaim: (id) => find("claim", id) as ReturnType<GraphView["findClaim"]>,
      findSource: (id) => find("source", id) as ReturnType<GraphView["findSource"]>,
      namersOf: (kind, id) => {
        if (!namers.has(keyOf(kind, id))) wanted.namers.set(keyOf(kind, id), { kind, id });
        return namers.get(keyOf(kind, id)) ?? [];
      },
    });
    if (wanted.things.size + wanted.namers.size === 0) return answer;
  }
}

interface Named {
  readonly kind: Kind;
  readonly id: string;
}
const keyOf = (kind: Kind, id: string): string => `${kind} ${id}`;

/** What the edits are about, and what they name. */
function* firstOf(change: Change): Generator<readonly [string, Named]> {
  for (const edit of change) {
    const id = idOfEdit(edit);
    yield [keyOf(edit.kind, id), { kind: edit.kind, id }];
    if (edit.before) yield [keyOf(edit.kind, edit.before.id), { kind: edit.kind, id: edit.before.id }];
    if (edit.after)
      for (const { kind, id: named } of namesOf({ kind: edit.kind, thing: edit.after } as Standing))
        yield [keyOf(kind, named), { kind, id: named }];
  }
}

function* withdrawnBy(change: Change): Generator<readonly [string, Named]> {
  for (const { kind, before, after } of change)
    if (before && !after) yield [keyOf(kind, before.id), { kind, id: before.id }];
}

/** What is read of a version `v` of each kind, and the thing that it makes. */
type Reading = Readonly<
  Record<Kind, { readonly read: string; readonly make: (row: never) => Standing["thing"] }>
>;
const body = { read: "v.body AS body", make: (row: { body: string }) => deepFreeze(JSON.parse(row.body)) };
const WHOLE: Reading = { term: body, claim: body, source: body };
const NAMED: Reading = {
  term: {
    read: "v.id AS id, v.kind AS kind, head([(v)-[:BROADER]->(above) | above.id]) AS broader",
    make: ({ id, kind, broader }: { id: string; kind: string; broader: string | null }) =>
      ({ id, kind, ...(broader === null ? {} : { broader }) }) as Term,
  },
  claim: {
    read: "v.id AS id, v.relation AS relation, head([(v)-[:EXCEPTS]->(claim) | claim.id]) AS of",
    make: ({ id, relation, of }: { id: string; relation: string; of: string | null }) =>
      ({ id, relation, ...(of === null ? {} : { of }) }) as Claim,
  },
  source: { read: "v.id AS id", make: ({ id }: { id: string }) => ({ id }) as Source },
};

async function readStanding(
  run: Run,
  reading: Reading,
  wanted: readonly Named[],
  known: Map<string, Standing | undefined>,
): Promise<void> {
  const ids: Readonly<Record<Kind, string[]>> = { term: [], claim: [], source: [] };
  for (const { kind, id } of wanted) {
    known.set(keyOf(kind, id), undefined);
    ids[kind].push(id);
  }
  for (const kind of KINDS) {
    const { read, make } = reading[kind];
    for (let at = 0; at < ids[kind].length; at += IDS_AT_ONCE) {
      const rows = await run<never>(
        `UNWIND $ids AS id
         MATCH (v:${LABELS[kind]}Version {store: $store, id: id}) WHERE v.since > 0 AND v.until = ${STILL_STANDS}
         RETURN ${read}`,
        { ids: ids[kind].slice(at, at + IDS_AT_ONCE) },
      );
      for (const row of rows) {
        const thing = make(row);
        known.set(keyOf(kind, thing.id), { kind, thing } as Standing);
      }
    }
  }
}

async function readNamers(run: Run, { kind, id }: Named): Promise<readonly Standing[]> {
  const rows = await run<{ label: string; body: string }>(
    `MATCH (thing:${LABELS[kind]} {store: $store, id: $id})-[r]-(v) WHERE type(r) <> "OF" AND v.until = ${STILL_STANDS}
     RETURN DISTINCT labels(v)[0] AS label, v.id AS id, v.body AS body ORDER BY label, id`,
    { id },
  );
  return KINDS.flatMap((by) =>
    rows.filter(({ label }) => label === `${LABELS[by]}Version`).map(({ body }) => standingOf(by, body)),
  );
}

const standingOf = (kind: Kind, body: string): Standing =>
  ({ kind, thing: deepFreeze(JSON.parse(body)) }) as Standing;
