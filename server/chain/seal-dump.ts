import { createHash } from "node:crypto";
import { canonicalJson } from "../domain/canonical-json.ts";
import { DUMP_FORMAT, DUMP_VERSION, type DumpRecord } from "../domain/dump.ts";

/** A record of a dump as its line, with the line feed. */
export const dumpLine = (record: DumpRecord): string => `${canonicalJson(record)}\n`;

/** Puts the header before and the trailer behind the records of a dump. */
export function* sealDump(
  records: Iterable<Extract<DumpRecord, { kind: "revision" | "examination" }>>,
): Generator<DumpRecord> {
  const hash = createHash("sha256");
  const count = { revision: 0, examination: 0 };
  const header: DumpRecord = { kind: "header", format: DUMP_FORMAT, version: DUMP_VERSION };
  hash.update(dumpLine(header));
  yield header;
  for (const record of records) {
    count[record.kind]++;
    hash.update(dumpLine(record));
    yield record;
  }
  yield {
    kind: "trailer",
    revisions: count.revision,
    examinations: count.examination,
    sha256: hash.digest("hex"),
  };
}
