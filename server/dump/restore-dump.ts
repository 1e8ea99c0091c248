import { createReadStream } from "node:fs";
import { TextDecoder } from "node:util";
import type { DumpRecord } from "../domain/dump.ts";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import type { Store } from "../ports/store.ts";
import { readRecord } from "./read-record.ts";

/** Ends the reading of a dump from within; never leaves this file. */
class Refused extends Error {
  readonly problem: Problem;
  constructor(refusal: Problem) {
    super(refusal.message);
    this.problem = refusal;
  }
}

/** Restores a dump file into an empty store, whole or not at all. */
export async function restoreDump(
  store: Store,
  path: string,
): Promise<{ readonly records: number } | Problem> {
  try {
    return await store.restore(recordsIn(linesOf(path)));
  } catch (failure) {
    if (failure instanceof Refused) return failure.problem;
    const refusal = findFileProblem(failure, path);
    if (refusal !== undefined) return refusal;
    throw failure;
  }
}

async function* recordsIn(lines: AsyncIterable<string>): AsyncGenerator<DumpRecord> {
  let number = 0;
  for await (const line of lines) {
    const record = readRecord(line, ++number);
    if (isProblem(record)) throw new Refused(record);
    yield record;
  }
}

/** The lines of a file without their line feeds. What is not UTF-8, and a last line without its line feed, is refused. */
async function* linesOf(path: string): AsyncGenerator<string> {
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  let rest = "";
  let number = 0;
  for await (const bytes of createReadStream(path)) {
    const pieces = (rest + decode(decoder, bytes, number + 1)).split("\n");
    rest = pieces.pop() ?? "";
    number += pieces.length;
    yield* pieces;
  }
  if (rest !== "") throw new Refused(cutOff(number + 1));
}

function decode(decoder: TextDecoder, bytes: Uint8Array, line: number): string {
  try {
    return decoder.decode(bytes, { stream: true });
  } catch {
    throw new Refused(
      problem(
        "DAMAGED_DUMP",
        `The dump is not UTF-8 text, at or after line ${line}. Nothing was restored; use an undamaged copy.`,
        [line],
      ),
    );
  }
}

const cutOff = (line: number): Problem =>
  problem(
    "DAMAGED_DUMP",
    `The dump breaks off within line ${line}. Nothing was restored; use a whole copy.`,
    [line],
  );

function findFileProblem(failure: unknown, path: string): Problem | undefined {
  const { code, message } = failure as { readonly code?: unknown; readonly message?: unknown };
  if (typeof code !== "string" || !/^E[A-Z]+$/.test(code)) return undefined;
  return problem("UNREADABLE_FILE", `${path} cannot be read (${message}); name a file that can.`);
}
