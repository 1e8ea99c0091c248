import { checkLedger } from "../../chain/check-ledger.ts";
import { hashOfVersion, linkWritten, type MadeByWrite, noteOf } from "../../chain/link-written.ts";
import { ledgerTampered } from "../../chain/refusals.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { WriteNote, Written } from "../../domain/written.ts";
import type { Database, Run } from "./database.ts";
import { type Moment, momentIn } from "./dump-database.ts";
import { examinationOf, VERSION_NODE, type VersionNode } from "./examinations.ts";
import { lockStore } from "./store-state.ts";
import { propertiesOf, WRITE_NODE, type WriteNode, writesUpTo, writtenOf } from "./writes.ts";

/** Of one moment: how far the store had come, the cards, and what they were found by. */
export interface Kept extends Moment {
  readonly keys: readonly { kind: string; name: string; value: string; id: string }[];
}

/** Reads what the ledger is held against. */
export const readKept = (database: Database): Promise<Kept> =>
  database.readMoment(async (run) => ({
    ...(await momentIn(run)),
    keys: await run<Kept["keys"][number]>(
      "MATCH (k:CardKey {store: $store}) RETURN k.kind AS kind, k.name AS name, k.value AS value, k.id AS id",
    ),
  }));

/**
 * Recomputes the chain of the ledger up to a number, and holds what it tells of against what was there at that moment.
 */
export async function findWrongLine(database: Database, kept: Kept): Promise<Problem | undefined> {
  const { revision, sequence, cards } = kept;
  const ledger = checkLedger();
  for await (const written of writesUpTo(database, sequence)) {
    const broken = ledger.take(written, await madeBy(database.read, written));
    if (broken !== undefined) return ledgerTampered(broken);
  }
  for (const card of cards) {
    const broken = ledger.takeCard(card);
    if (broken !== undefined) return ledgerTampered(broken);
  }
  const [counted] = await database.read<{ versions: number }>(
    "MATCH (v:ExaminationVersion {store: $store}) WHERE v.sequence <= $sequence RETURN count(v) AS versions",
    { sequence },
  );
  const held = { revisions: revision, versions: counted?.versions ?? 0 };
  const missing = ledger.end(held) ?? findWrongKey(kept);
  return missing === undefined ? undefined : ledgerTampered(missing);
}

/** What cards are found by follows from them. */
function findWrongKey({ cards, keys }: Kept): string | undefined {
  const due = new Map(
    cards.flatMap((card) =>
      Object.entries(card.keys).flatMap(([name, values]) =>
        values.map((value) => [canonicalJson([card.kind, name, value, card.id]), card] as const),
      ),
    ),
  );
  const extra = keys.filter(
    ({ kind, name, value, id }) => !due.delete(canonicalJson([kind, name, value, id])),
  );
  const [wrong] = [...due.values(), ...extra];
  return wrong && `the card ${wrong.kind} ${wrong.id} is not found by its keys`;
}

/** Chains the lines of a database from before there was a chain. */
export async function chainOldWrites(database: Database, key: string): Promise<Problem | undefined> {
  const unchained = await database.read(
    "MATCH (s:Store {name: $store}) WHERE s.sequence > 0 AND s.head IS NULL RETURN s.name AS name",
  );
  if (unchained.length === 0) return undefined;
  const done = await database.write(async (run) => {
    await lockStore(run, key);
    const old = await run<{ written: WriteNode }>(
      `MATCH (s:Store {name: $store}) WHERE s.sequence > 0 AND s.head IS NULL
       MATCH (w:Write {store: $store}) WHERE w.sequence <= s.sequence
       RETURN ${WRITE_NODE} ORDER BY w.sequence`,
    );
    let newest: Written | undefined;
    for (const { written } of old) {
      const note = noteOf(writtenOf(written));
      newest = linkWritten(note, await madeBy(run, note), newest);
      await run("MATCH (w:Write {store: $store, sequence: $sequence}) SET w += $line", {
        sequence: newest.sequence,
        line: propertiesOf(newest),
      });
    }
    await run("MATCH (s:Store {name: $store}) SET s.head = coalesce(s.head, $head) REMOVE s.lockedBy", {
      head: newest?.hash ?? null,
    });
    return "done" as const;
  });
  return isProblem(done) ? done : undefined;
}

/** What the database holds of what a write says it made. */
async function madeBy(
  ask: Database["read"] | Run,
  { revision, examination, restored }: WriteNote,
): Promise<MadeByWrite> {
  const [row] = await ask<{ hash: string | null; version: VersionNode | null }>(
    `OPTIONAL MATCH (r:Revision {store: $store, number: $revision})
     OPTIONAL MATCH (v:ExaminationVersion {store: $store, id: $id, version: $version})
     RETURN r.hash AS hash, ${VERSION_NODE} AS version`,
    { revision: revision ?? -1, id: examination?.id ?? "", version: examination?.version ?? -1 },
  );
  return {
    revision: row?.hash ?? undefined,
    examination: row?.version ? hashOfVersion(examinationOf(row.version)) : undefined,
    examinations: restored && (await restoredVersions(ask)),
  };
}

/** Hashes of the versions that came with the first write, which was a restore. */
async function restoredVersions(ask: Database["read"] | Run): Promise<readonly string[]> {
  const rows = await ask<{ found: VersionNode }>(
    `MATCH (v:ExaminationVersion {store: $store}) WHERE v.sequence = 1
     RETURN ${VERSION_NODE} AS found ORDER BY v.id, v.version`,
  );
  return rows.map(({ found }) => hashOfVersion(examinationOf(found)));
}
