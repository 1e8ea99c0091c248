import { createReadStream } from "node:fs";
import { open } from "node:fs/promises";
import { pipeline } from "node:stream";
import { TextDecoder } from "node:util";
import { createZstdDecompress } from "node:zlib";
import { type Problem, type ProblemCode, problem } from "../domain/problem.ts";

/** How a file of lines is spoken of where it cannot be read to its end. */
export interface LinesAbout {
  readonly code: ProblemCode;
  /** What the file is: "dump". */
  readonly what: string;
  /** What was not done, and what to do: a sentence. */
  readonly advice: string;
  /** Whether a last line without a line feed is a whole one. */
  readonly mayEndOpen: boolean;
}

/** Ends the reading of lines from within; `refusalOf` knows it. */
export class LinesRefused extends Error {
  readonly problem: Problem;
  constructor(refusal: Problem) {
    super(refusal.message);
    this.problem = refusal;
  }
}

/** Bytes read at once. */
const AT_ONCE = 1 << 20;
/** Signs of one line: the longest text that the language can hold, with some room. */
const LONGEST_LINE = 500_000_000;
/** Begins every file that zstd compressed (RFC 8878, 3.1.1). */
const ZSTD_BEGINS = Buffer.from([0x28, 0xb5, 0x2f, 0xfd]);

/**
 * The lines of a UTF-8 file without their line feeds, some at a time; a file that zstd compressed is read as what it was.
 * Throws `LinesRefused` for what is not whole, not UTF-8 or not readable.
 */
export async function* readLines(path: string, about: LinesAbout): AsyncGenerator<readonly string[]> {
  const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
  const refuse = (what: string, line: number): LinesRefused =>
    new LinesRefused(problem(about.code, `The ${about.what} ${what}. ${about.advice}`, [line]));
  let begun: string[] = [];
  let [length, number] = [0, 0];
  try {
    for await (const bytes of await bytesOf(path)) {
      const text = decode(decoder, bytes as Uint8Array);
      if (text === undefined) throw refuse(`is not UTF-8 text, at or after line ${number + 1}`, number + 1);
      const lines = text.split("\n");
      const last = lines.pop() ?? "";
      if (lines.length > 0) {
        lines[0] = begun.join("") + lines[0];
        number += lines.length;
        yield lines;
        [begun, length] = [[], 0];
      }
      begun.push(last);
      length += last.length;
      if (length > LONGEST_LINE)
        throw refuse(`has more in line ${number + 1} than can be read at once`, number + 1);
    }
    if (length > 0 && !about.mayEndOpen) throw refuse(`breaks off within line ${number + 1}`, number + 1);
    if (length > 0) yield [begun.join("")];
  } catch (failure) {
    const { code, message } = failure as { readonly code?: unknown; readonly message?: unknown };
    if (typeof code !== "string") throw failure;
    if (/^(ZSTD_|Z_|ERR_ZLIB)/.test(code))
      throw refuse(`is damaged after line ${number}: it cannot be unpacked (${message})`, number + 1);
    if (!/^E[A-Z]+$/.test(code)) throw failure;
    throw new LinesRefused(
      problem("UNREADABLE_FILE", `${path} cannot be read (${message}); name a file that can.`),
    );
  }
}

/** What a reading of lines was refused for; any other failure is thrown again. */
export function refusalOf(failure: unknown): Problem {
  if (failure instanceof LinesRefused) return failure.problem;
  throw failure;
}

async function bytesOf(path: string): Promise<AsyncIterable<unknown>> {
  const isPacked = await isZstd(path);
  const file = createReadStream(path, { highWaterMark: AT_ONCE });
  if (!isPacked) return file;
  // A failure of the file comes out of what unpacks it.
  return pipeline(file, createZstdDecompress({ chunkSize: AT_ONCE }), () => undefined);
}

async function isZstd(path: string): Promise<boolean> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(4), 0, 4, 0);
    return bytesRead === 4 && buffer.equals(ZSTD_BEGINS);
  } finally {
    await file.close();
  }
}

function decode(decoder: TextDecoder, bytes: Uint8Array): string | undefined {
  try {
    return decoder.decode(bytes, { stream: true });
  } catch {
    return undefined;
  }
}
