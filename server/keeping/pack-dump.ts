import { createWriteStream } from "node:fs";
import { stat } from "node:fs/promises";
import type { Writable } from "node:stream";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { constants, createZstdCompress } from "node:zlib";
import { dumpLine } from "../chain/seal-dump.ts";
import type { Store } from "../ports/store.ts";
import { type Watched, watchRecords } from "./watch-records.ts";

/** A dump in a file, compressed. */
export interface PackedDump {
  readonly seen: Watched;
  readonly bytes: number;
}

/** Opens a file to write; it is on the disk when the stream has ended. */
export const openToWrite = (path: string): Writable => createWriteStream(path, { flush: true, mode: 0o600 });

/** Writes a dump of the whole store to a file, compressed with zstd, each frame with a check of its own. */
export async function packDump(
  store: Store,
  path: string,
  step?: (seen: Watched) => void,
  open: (path: string) => Writable = openToWrite,
): Promise<PackedDump> {
  const { records, seen } = watchRecords(store.dump(), step);
  async function* lines(): AsyncGenerator<string> {
    for await (const record of records) yield dumpLine(record);
  }
  const compress = createZstdCompress({ params: { [constants.ZSTD_c_checksumFlag]: 1 } });
  await pipeline(Readable.from(lines()), compress, open(path));
  return { seen, bytes: (await stat(path)).size };
}
