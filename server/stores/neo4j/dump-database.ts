import { sealRead } from "../../chain/seal-dump.ts";
import type { Card } from "../../domain/card.ts";
import type { DumpedThing, DumpRecord } from "../../domain/dump.ts";
import type { Revision } from "../../domain/revision.ts";
import { allCards } from "./cards.ts";
import type { Database, Run } from "./database.ts";
import { examinationOf, VERSION_NODE, type VersionNode } from "./examinations.ts";
import { REVISION, readChange, revisionOf } from "./revisions.ts";
import { writesUpTo } from "./writes.ts";

const REVISIONS_AT_ONCE = 500;
const VERSIONS_AT_ONCE = 500;

/** How far a store has come at one moment, and the cards of that moment, which are overwritten later. */
export interface Moment {
  readonly revision: number;
  readonly sequence: number;
  readonly cards: readonly Card[];
}

/**
 * Reads a dump, page by page. But for cards nothing is overwritten, and every node says with which write it came, so that
 * what is written meanwhile is left out.
 */
export async function* dumpDatabase(database: Database): AsyncGenerator<DumpRecord> {
  yield* sealRead(readRecords(database, await database.readMoment(momentIn)));
}

/** How far the store has come, with its cards. */
export async function momentIn(run: Run): Promise<Moment> {
  const [state] = await run<{ revision: number; sequence: number }>(
    "MATCH (s:Store {name: $store}) RETURN s.revision AS revision, s.sequence AS sequence",
  );
  const cards: Card[] = [];
  for await (const card of allCards(run)) cards.push(card);
  return { ...(state ?? { revision: 0, sequence: 0 }), cards };
}

async function* readRecords(database: Database, moment: Moment): AsyncGenerator<DumpedThing> {
  for await (const revision of readRevisions(database, moment.revision))
    yield { kind: "revision", revision, change: await readChange(database, revision.number) };
  for (let [id, version] = ["", 0], isMore = true; isMore; ) {
    const rows = await database.read<{ found: VersionNode }>(
      `MATCH (v:ExaminationVersion {store: $store})
       WHERE v.id >= $id AND (v.id > $id OR v.version > $version) AND v.sequence <= $sequence
       RETURN ${VERSION_NODE} AS found ORDER BY v.id, v.version LIMIT $limit`,
      { id, version, sequence: moment.sequence, limit: VERSIONS_AT_ONCE },
    );
    for (const { found } of rows) yield { kind: "examination", examination: examinationOf(found) };
    ({ id, version } = rows.at(-1)?.found ?? { id, version });
    isMore = rows.length === VERSIONS_AT_ONCE;
  }
  for (const card of moment.cards) yield { kind: "card", card };
  for await (const write of writesUpTo(database, moment.sequence)) yield { kind: "write", write };
}

/** The revisions up to a number as they are kept, oldest first. */
export async function* readRevisions(database: Database, newest: number): AsyncGenerator<Revision> {
  for (let after = 0, isMore = true; isMore; ) {
    const rows = await database.read<{ revision: Revision }>(
      `MATCH (r:Revision {store: $store}) WHERE $after < r.number <= $newest
       RETURN ${REVISION} ORDER BY r.number LIMIT $limit`,
      { after, newest, limit: REVISIONS_AT_ONCE },
    );
    for (const { revision } of rows) yield revisionOf(revision);
    after = rows.at(-1)?.revision.number ?? after;
    isMore = rows.length === REVISIONS_AT_ONCE;
  }
}
