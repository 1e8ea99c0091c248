import type { DumpRecord } from "../domain/dump.ts";
import type { ExaminationId } from "../domain/ids.ts";

/** What went by in a dump. */
export interface Watched {
  revisions: number;
  /** Terms, claims and sources put, changed or withdrawn. */
  edits: number;
  /** The newest version of each examination. */
  readonly versions: Map<ExaminationId, number>;
  /** The hash in the trailer, of all lines before it. */
  sha256: string | undefined;
}

/** Hands the records of a dump on and notes what goes by; `step` is called after each. */
export function watchRecords(
  records: AsyncIterable<DumpRecord>,
  step: (seen: Watched) => void = () => {},
): { readonly records: AsyncIterable<DumpRecord>; readonly seen: Watched } {
  const seen: Watched = { revisions: 0, edits: 0, versions: new Map(), sha256: undefined };
  async function* watch(): AsyncGenerator<DumpRecord> {
    for await (const record of records) {
      if (record.kind === "revision") {
        seen.revisions++;
        seen.edits += record.change.length;
      } else if (record.kind === "examination")
        seen.versions.set(record.examination.id, record.examination.version);
      else if (record.kind === "trailer") seen.sha256 = record.sha256;
      step(seen);
      yield record;
    }
  }
  return { records: watch(), seen };
}

/** Reads a dump to its end, for what goes by. */
export async function readThrough(
  records: AsyncIterable<DumpRecord>,
  step?: (seen: Watched) => void,
): Promise<Watched> {
  const watched = watchRecords(records, step);
  for await (const _ of watched.records);
  return watched.seen;
}
