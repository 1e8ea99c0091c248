import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Deed } from "../../domain/deed.ts";
import { deepFreeze } from "../../domain/deep-freeze.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import type { Written, WrittenCard } from "../../domain/written.ts";
import { checkCount } from "../../ports/check-count.ts";
import type { Database, Run } from "./database.ts";
import { NEWEST } from "./newest.ts";

export interface WriteNode {
  readonly sequence: number;
  readonly revision: number | null;
  readonly examination: ExaminationId | null;
  readonly version: number | null;
  readonly restored: boolean | null;
  readonly cards: string | null;
  readonly deed: string | null;
  readonly content: string;
  readonly previous: string;
  readonly hash: string;
}
/** The properties of a `WriteNode`. */
export const WRITE_NODE =
  "w {.sequence, .revision, .examination, .version, .restored, .cards, .deed, .content, .previous, .hash} AS written";
const AT_ONCE = 1_000;

/** The number of the newest write; 0 before the first. */
export async function newestWrite(database: Database): Promise<number> {
  const [row] = await database.read<{ newest: number }>(`${NEWEST} RETURN sequence AS newest`);
  return row?.newest ?? 0;
}

/** The writes after that number, oldest first. */
export async function writesAfter(
  database: Database,
  sequence: number,
  first: number,
): Promise<readonly Written[]> {
  const rows = await database.read<{ written: WriteNode }>(
    `${NEWEST}
     MATCH (w:Write {store: $store}) WHERE $sequence < w.sequence <= sequence
     RETURN ${WRITE_NODE} ORDER BY w.sequence LIMIT $first`,
    { sequence, first: checkCount(first) },
  );
  return rows.map(({ written }) => writtenOf(written));
}

/** The ledger up to a number, oldest first. */
export async function* writesUpTo(database: Database, newest: number): AsyncGenerator<Written> {
  for (let after = 0; after < newest; ) {
    const writes = await writesAfter(database, after, Math.min(AT_ONCE, newest - after));
    yield* writes;
    after = writes.at(-1)?.sequence ?? newest;
  }
}

/** Adds lines to the ledger; they are not seen before the store says so. */
export async function addWrites(run: Run, writes: readonly Written[]): Promise<void> {
  for (let at = 0; at < writes.length; at += AT_ONCE)
    await run("UNWIND $lines AS line CREATE (w:Write {store: $store}) SET w += line", {
      lines: writes.slice(at, at + AT_ONCE).map(propertiesOf),
    });
}

/** A line as the properties of its node; what it does not say is left out. */
export const propertiesOf = ({ examination, cards, deed, ...rest }: Written): object => ({
  ...rest,
  ...(examination === undefined ? {} : { examination: examination.id, version: examination.version }),
  ...(cards === undefined ? {} : { cards: canonicalJson(cards) }),
  ...(deed === undefined ? {} : { deed: canonicalJson(deed) }),
});

/** A node as the domain has it. */
export const writtenOf = (node: WriteNode): Written => {
  const { sequence, revision, examination, version, restored, cards, deed, content, previous, hash } = node;
  return deepFreeze({
    sequence,
    ...(revision === null ? {} : { revision }),
    ...(examination === null || version === null ? {} : { examination: { id: examination, version } }),
    ...(restored === true ? { restored } : {}),
    ...(cards === null ? {} : { cards: JSON.parse(cards) as readonly WrittenCard[] }),
    ...(deed === null ? {} : { deed: JSON.parse(deed) as Deed }),
    ...{ content, previous, hash },
  });
};
