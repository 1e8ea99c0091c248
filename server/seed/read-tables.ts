import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { compareIds } from "../domain/compare.ts";
import { makeReferenceRow } from "../domain/make-reference-row.ts";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import type { ReferenceRow } from "../domain/reference-row.ts";
import { findJson } from "../formats/find-json.ts";
import { filesIn } from "./files-in.ts";
import type { SeedLine } from "./seed-line.ts";

/**
 * Reads the reference tables of a folder of seed data: every `tables/<table>.jsonl`, one row a line. Rows come by id,
 * so that the same folder gives the same list everywhere; a folder without tables gives none. The refusal names the
 * file, the line, the id and the field, and says what to do. Whether what a row names exists is for `checkSeed`.
 */
export async function readTables(folder: string): Promise<readonly ReferenceRow[] | Problem> {
  const lines = await readTableLines(folder);
  return isProblem(lines) ? lines : lines.map(({ thing }) => thing).sort(compareIds);
}

/** The same with the place of each row, file by file. */
export async function readTableLines(folder: string): Promise<readonly SeedLine<ReferenceRow>[] | Problem> {
  const lines: SeedLine<ReferenceRow>[] = [];
  for (const file of await filesIn(join(folder, "tables"), ".jsonl")) {
    for (const [index, line] of (await readFile(file, "utf8")).split("\n").entries()) {
      if (line.trim() === "") continue;
      const row = readRow(line, `${file}, line ${index + 1}`, basename(file, ".jsonl"));
      if (isProblem(row)) return row;
      lines.push({ thing: row, file, line: index + 1 });
    }
  }
  return lines;
}

function readRow(line: string, where: string, table: string): ReferenceRow | Problem {
  const draft = findJson(line);
  if (draft === undefined) return refusal(where, "it is not a JSON object; write one row a line");
  const row = makeReferenceRow(draft);
  const id = (draft as { readonly id?: unknown }).id;
  const named = typeof id === "string" ? `${where}, ${id}` : where;
  if ("id" in row)
    return row.table === table
      ? row
      : refusal(named, `its table is ${row.table}; write ${table} or move the row`, ["table"]);
  const [first] = row;
  return refusal(named, first?.message ?? "it is not a row", first?.path);
}

const refusal = (where: string, what: string, path: Problem["path"] = []): Problem =>
  problem("WRONG_FORMAT", `The reference table ${where} cannot be used: ${what}`, path);
