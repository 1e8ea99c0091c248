import { createHash } from "node:crypto";
import { canonicalJson } from "../domain/canonical-json.ts";
import { DUMP_FORMAT, DUMP_VERSION, type DumpedThing, type DumpRecord } from "../domain/dump.ts";
import { changeText } from "./change-text.ts";

/** A record of a dump as its line, with the line feed. */
export const dumpLine = (record: DumpRecord): string =>
  record.kind === "revision" ? revisionLine(record) : `${canonicalJson(record)}\n`;

/** The same as the canonical JSON of the record; what is known of the text of a change is not made again. */
function revisionLine({ change, ...rest }: Extract<DumpRecord, { kind: "revision" }>): string {
  return `{"change":${changeText(change)},${canonicalJson(rest).slice(1)}\n`;
}

/** Puts the header before and the trailer behind the records of a dump. */
export function* sealDump(records: Iterable<DumpedThing>): Generator<DumpRecord> {
  const seal = beginSeal();
  yield seal.header;
  for (const record of records) yield seal.take(record);
  yield seal.trailer();
}

/** The same for records that are still being read. */
export async function* sealRead(records: AsyncIterable<DumpedThing>): AsyncGenerator<DumpRecord> {
  const seal = beginSeal();
  yield seal.header;
  for await (const record of records) yield seal.take(record);
  yield seal.trailer();
}

function beginSeal() {
  const hash = createHash("sha256");
  const count = { revision: 0, examination: 0, card: 0, write: 0 };
  const header: DumpRecord = { kind: "header", format: DUMP_FORMAT, version: DUMP_VERSION };
  hash.update(dumpLine(header));
  return {
    header,
    take: (record: DumpedThing): DumpedThing => {
      count[record.kind]++;
      hash.update(dumpLine(record));
      return record;
    },
    trailer: (): DumpRecord => ({
      kind: "trailer",
      revisions: count.revision,
      examinations: count.examination,
      cards: count.card,
      writes: count.write,
      sha256: hash.digest("hex"),
    }),
  };
}
