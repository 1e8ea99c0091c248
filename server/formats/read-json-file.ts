import { readFile, stat } from "node:fs/promises";
import { isProblem, type Problem, problem } from "../domain/problem.ts";

/** Reads a file of JSON of at most `largest` bytes, or says why it cannot be read. */
export async function readJsonFile(
  path: string,
  largest: number,
): Promise<{ readonly value: unknown } | Problem> {
  const bytes = await readBytes(path, largest);
  return isProblem(bytes) ? bytes : parse(path, bytes);
}

async function readBytes(path: string, largest: number): Promise<Uint8Array | Problem> {
  try {
    const { size } = await stat(path);
    if (size <= largest) return await readFile(path);
    return problem(
      "TOO_LARGE",
      `${path} has ${size} bytes, and at most ${largest} are read; shorten its notes or divide it.`,
    );
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return problem("UNREADABLE_FILE", `${path} cannot be read (${why}); name a file that can.`);
  }
}

function parse(path: string, bytes: Uint8Array): { readonly value: unknown } | Problem {
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return { value: JSON.parse(text) };
  } catch (error) {
    const why = error instanceof SyntaxError ? error.message : "it is not UTF-8 text";
    return problem("WRONG_FORMAT", `${path} is not JSON (${why}); correct it there.`);
  }
}
