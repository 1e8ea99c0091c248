import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Citation } from "../domain/claim.ts";
import { type Problem, problem } from "../domain/problem.ts";

/** Rows of the fact register, each with the basis on which it stands there. */
export type Register = ReadonlyMap<string, Citation["basis"]>;

const LINE = /^(?<row>[A-M]\d+) (?<basis>published|common practice|from memory)$/;

/** Reads `register-rows.txt` of a folder of seed data: a row and its basis a line, such as `A13 common practice`. A folder without it has no register. */
export async function readRegister(folder: string): Promise<Register | Problem> {
  const file = join(folder, "register-rows.txt");
  const text = await readFile(file, "utf8").catch(() => "");
  const register = new Map<string, Citation["basis"]>();
  for (const [index, line] of text.trimEnd().split("\n").entries()) {
    const { row, basis } = LINE.exec(line)?.groups ?? {};
    if (row !== undefined) register.set(row, basis as Citation["basis"]);
    else if (text !== "")
      return problem(
        "WRONG_FORMAT",
        `${file}, line ${index + 1}: “${line}” is not a row and its basis; write it as in “A13 common practice”.`,
      );
  }
  return register;
}
