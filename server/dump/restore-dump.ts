import type { DumpRecord } from "../domain/dump.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import { type LinesAbout, LinesRefused, readLines, refusalOf } from "../formats/read-lines.ts";
import type { Store } from "../ports/store.ts";
import { readRecord } from "./read-record.ts";

const ABOUT: LinesAbout = {
  code: "DAMAGED_DUMP",
  what: "dump",
  advice: "Nothing was restored; use a whole, undamaged copy.",
  mayEndOpen: false,
};

/** Restores a dump file, compressed or not, into an empty store, whole or not at all; `step` is called with each record. */
export async function restoreDump(
  store: Pick<Store, "restore">,
  path: string,
  step: (record: DumpRecord) => void = () => {},
): Promise<{ readonly records: number } | Problem> {
  try {
    return await store.restore(recordsIn(path, step));
  } catch (failure) {
    return refusalOf(failure);
  }
}

async function* recordsIn(path: string, step: (record: DumpRecord) => void): AsyncGenerator<DumpRecord> {
  let number = 0;
  for await (const lines of readLines(path, ABOUT))
    for (const line of lines) {
      const record = readRecord(line, ++number);
      if (isProblem(record)) throw new LinesRefused(record);
      step(record);
      yield record;
    }
}
