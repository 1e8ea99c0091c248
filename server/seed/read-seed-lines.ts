import { readFile } from "node:fs/promises";
import { ID_PATTERN } from "../domain/ids.ts";
import { type Problem, problem } from "../domain/problem.ts";
import { findJson } from "../formats/find-json.ts";
import { filesIn } from "./files-in.ts";
import type { SeedLine } from "./seed-line.ts";

/**
 * Every line of every `.jsonl` file of a folder, by file and line; none if there is no such folder. That a thing is more
 * than an object with an id is only hoped: `checkSeed` has to look.
 */
export async function readSeedLines<Thing extends { readonly id: string }>(
  folder: string,
): Promise<readonly SeedLine<Thing>[] | Problem> {
  const lines: SeedLine<Thing>[] = [];
  for (const file of await filesIn(folder, ".jsonl")) {
    for (const [index, text] of (await readFile(file, "utf8")).split("\n").entries()) {
      if (text.trim() === "") continue;
      const thing = findJson(text) as Thing | null | undefined;
      if (typeof thing?.id !== "string" || !ID_PATTERN.test(thing.id))
        return problem(
          "WRONG_FORMAT",
          `${file}, line ${index + 1}, field id: the line is not a JSON object with an id of letters, digits, dots and hyphens; correct it there.`,
          ["id"],
        );
      lines.push({ thing, file, line: index + 1 });
    }
  }
  return lines;
}
