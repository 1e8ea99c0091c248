import { createHash } from "node:crypto";
import { textsOf } from "../../chain/change-text.ts";
import { findBrokenLink } from "../../chain/find-broken-link.ts";
import { storeTampered } from "../../chain/refusals.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Change } from "../../domain/change.ts";
import { compareText } from "../../domain/compare.ts";
import { idOfEdit, type Standing } from "../../domain/graph-view.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import { NO_HASH, type Revision } from "../../domain/revision.ts";
import type { Progress } from "../../ports/progress.ts";
import type { Database } from "./database.ts";
import { readRevisions } from "./dump-database.ts";
import { findWrongLine, readKept } from "./ledger.ts";
import { STILL_STANDS } from "./migrations.ts";
import { readChange } from "./revisions.ts";
import { type Cites, KINDS, type Kind, LABELS, type VersionRow, versionRow } from "./version-row.ts";

type Verified = { readonly revisions: number; readonly head: string } | Problem;

/** What a version should be, as a short digest; its `until` is known when all changes were made. */
interface Due {
  readonly digest: string;
  until: number;
}
type DueVersions = ReadonlyMap<string, Due>;

/**
 * Makes every change again and compares: the hashes, then each version with all its relationships. Refuses with the first
 * revision that does not check. Writes made meanwhile are left out.
 */
export async function verifyDatabase(database: Database, progress: Progress = () => {}): Promise<Verified> {
  const kept = await readKept(database);
  const { revision: newest, sequence } = kept;
  const due = new Map<string, Due>();
  const head = await remake(database, newest, due, progress);
  if (head !== undefined && "problem" in head) return head;
  if ((head?.number ?? 0) !== newest) return storeTampered((head?.number ?? 0) + 1, "it is missing");
  progress(() => "Comparing what stands with what the changes made");
  const wrong =
    (await findDifference(database, newest, due)) ??
    (await findBrokenVersion(database, sequence)) ??
    (await findWrongLine(database, kept));
  return wrong ?? { revisions: newest, head: head?.hash ?? NO_HASH };
}

async function remake(
  database: Database,
  newest: number,
  due: Map<string, Due>,
  progress: Progress,
): Promise<Revision | Problem | undefined> {
  const standing = new Map<string, Due>();
  let last: Revision | undefined;
  for await (const revision of readRevisions(database, newest)) {
    const number = (last?.number ?? 0) + 1;
    progress(() => `Making the changes again: revision ${number} of ${newest}`);
    const change = await findChange(database, revision.number);
    if (change === undefined) return storeTampered(number, "its change cannot be read");
    const broken = findBrokenLink(revision, change, last);
    if (broken !== undefined) return storeTampered(number, broken);
    const texts = textsOf(change);
    for (const [at, edit] of change.entries()) {
      const thing = `${edit.kind} ${idOfEdit(edit)}`;
      const before = standing.get(thing);
      if (before) before.until = number;
      standing.delete(thing);
      if (!edit.after) continue;
      const added = { kind: edit.kind, thing: edit.after } as Standing;
      const row = versionRow(added, number, 0, texts.after[at] ?? "");
      const made = { digest: digestOf(row), until: STILL_STANDS };
      standing.set(thing, made);
      due.set(`${thing} ${number}`, made);
    }
    last = revision;
  }
  return last;
}

async function findChange(database: Database, number: number): Promise<Change | undefined> {
  try {
    return await readChange(database, number);
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}

/** A version as it is kept; relationships as the ids they lead to. */
type KeptRow = Omit<VersionRow, "properties"> & {
  readonly properties: VersionRow["properties"] & { readonly since: number; readonly until: number };
  readonly of: readonly string[];
};

/** Of a row but for its `until`; the order of what relationships lead to does not count. */
function digestOf({ properties, cites, ...rest }: VersionRow): string {
  const { until: _, ...fixed } = properties;
  const sorted = (list: readonly (string | Cites)[]): readonly string[] =>
    list.map(canonicalJson).sort(compareText);
  const { id, broader, leads, states, proposes, needs, excepts, names } = rest;
  const lists = [broader, leads, states, proposes, needs, excepts, names, cites].map(sorted);
  return createHash("sha256")
    .update(canonicalJson([id, fixed, lists]))
    .digest("base64")
    .slice(0, 22);
}

const ROWS_AT_ONCE = 2_000;

const readRows = (kind: Kind): string => {
  const of = (pattern: string): string => `[${pattern} | n.id]`;
  return `MATCH (v:${LABELS[kind]}Version {store: $store})
   WHERE v.id >= $id AND (v.id > $id OR v.since > $since) AND v.since <= $newest
   WITH v ORDER BY v.id, v.since LIMIT $limit
   RETURN v.id AS id, properties(v) AS properties,
     ${of(`(v)-[:OF]->(n:${LABELS[kind]})`)} AS of, ${of("(v)-[:BROADER]->(n)")} AS broader,
     ${of("(n)-[:LEADS]->(v)")} AS leads, ${of("(n)-[:STATES]->(v)")} AS states, ${of("(n)-[:PROPOSES]->(v)")} AS proposes,
     ${of("(v)-[:NEEDS]->(n)")} AS needs, ${of("(v)-[:EXCEPTS]->(n)")} AS excepts, ${of("(v)-[:NAMES]->(n)")} AS names,
     [(v)-[c:CITES]->(n) | c {.place, .locator, .note, source: n.id}] AS cites
   ORDER BY id, v.since`;
};

/** The earliest version that is not as the changes made it, or is missing, or one too many. */
async function findDifference(
  database: Database,
  newest: number,
  due: DueVersions,
): Promise<Problem | undefined> {
  const missing = new Map(due);
  const wrong: { readonly since: number; readonly kind: Kind; readonly id: string }[] = [];
  for (const kind of KINDS)
    for (let [id, since] = ["", 0], isMore = true; isMore; ) {
      const rows = await database.read<KeptRow>(readRows(kind), { id, since, newest, limit: ROWS_AT_ONCE });
      for (const row of rows) {
        const key = `${kind} ${row.id} ${row.properties.since}`;
        if (!isAsDue(row, missing.get(key), newest))
          wrong.push({ since: row.properties.since, kind, id: row.id });
        missing.delete(key);
      }
      const last = rows.at(-1);
      if (last) [id, since] = [last.id, last.properties.since];
      isMore = rows.length === ROWS_AT_ONCE;
    }
  for (const key of missing.keys()) {
    const [kind = "", id = "", since] = key.split(" ");
    wrong.push({ since: Number(since), kind: kind as Kind, id });
  }
  const first = wrong.sort((a, b) => a.since - b.since)[0];
  return (
    first && storeTampered(first.since, `a row of ${first.kind} (${first.id}) is not as the changes made it`)
  );
}

function isAsDue(row: KeptRow, due: Due | undefined, newest: number): boolean {
  const {
    store: _,
    id: __,
    ...properties
  } = row.properties as KeptRow["properties"] & { store?: string; id?: string };
  const until =
    properties.until > newest && properties.until !== STILL_STANDS ? STILL_STANDS : properties.until;
  const cites = row.cites.map(({ note, ...cited }) =>
    note === null ? cited : { ...cited, note },
  ) as readonly Cites[];
  return (
    due !== undefined &&
    until === due.until &&
    row.of.length === 1 &&
    row.of[0] === row.id &&
    digestOf({ ...row, properties, cites }) === due.digest
  );
}

/** Versions run from 1 without a gap, and the newest is the last of them. */
async function findBrokenVersion(database: Database, sequence: number): Promise<Problem | undefined> {
  const [row] = await database.read<{ id: string }>(
    `CALL () {
       MATCH (v:ExaminationVersion {store: $store}) WHERE v.sequence <= $sequence
       WITH v.id AS id, min(v.version) AS first, max(v.version) AS last, count(*) AS count
       OPTIONAL MATCH (e:Examination {store: $store, id: id})
       WITH id, first, last, count, e WHERE first <> 1 OR last <> count OR coalesce(e.version, 0) < last
       RETURN id
       UNION
       MATCH (e:Examination {store: $store})
       WHERE NOT EXISTS { MATCH (:ExaminationVersion {store: $store, id: e.id, version: e.version}) }
       RETURN e.id AS id
     }
     RETURN id ORDER BY id LIMIT 1`,
    { sequence },
  );
  return (
    row &&
    problem(
      "STORE_CORRUPT",
      `The versions of examination ${row.id} have a gap. Restore the last sound dump into an empty store.`,
    )
  );
}
