import type { Writable } from "node:stream";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { dumpLine } from "../chain/seal-dump.ts";
import type { Store } from "../ports/store.ts";

/** Writes a dump of the whole store, line by line, and ends the stream. */
export async function writeDump(store: Store, to: Writable): Promise<void> {
  async function* lines(): AsyncGenerator<string> {
    for await (const record of store.dump()) yield dumpLine(record);
  }
  await pipeline(Readable.from(lines()), to);
}
