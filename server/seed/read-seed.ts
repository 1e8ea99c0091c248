import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Change, Edit } from "../domain/change.ts";
import { compareIds } from "../domain/compare.ts";
import type { Examination, Piece } from "../domain/examination.ts";
import { ID_PATTERN } from "../domain/ids.ts";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import { findJson } from "../formats/find-json.ts";
import { readPiece } from "../formats/read-piece.ts";
import { filesIn } from "./files-in.ts";

/** What a new store starts with. */
export interface Seed {
  readonly change: Change;
  readonly at: string;
  readonly by: string;
  readonly message: string;
  readonly pieces: readonly { readonly id: Examination["id"]; readonly piece: Piece }[];
}

const KINDS = ["source", "term", "claim"] as const;

/**
 * Reads a folder of seed data: `revision.json` ({at, by, message}), `terms`, `claims` and `sources` with JSON Lines (one
 * thing a line) and `pieces` with one piece a file. The change has sources, terms and claims, each by id, so that the
 * same folder makes the same revision everywhere. Whether the graph is sound is for the store.
 */
export async function readSeed(folder: string): Promise<Seed | Problem> {
  const file = join(folder, "revision.json");
  const about = await readJson(file);
  if (isProblem(about)) return about;
  const { at, by, message } = about as Partial<Record<string, unknown>>;
  if (typeof at !== "string" || typeof by !== "string" || typeof message !== "string")
    return wrong(file, "it needs at, by and message, each a text");
  const edits: Edit[] = [];
  for (const kind of KINDS) {
    const things = await readLines(join(folder, `${kind}s`));
    if (isProblem(things)) return things;
    for (const after of things.sort(compareIds)) edits.push({ kind, after } as unknown as Edit);
  }
  const pieces = await readPieces(join(folder, "pieces"));
  return isProblem(pieces) ? pieces : { change: edits, at, by, message, pieces };
}

interface Named {
  readonly id: string;
}

/** Every line of every `.jsonl` file of a folder; none if there is no such folder. */
async function readLines(folder: string): Promise<Named[] | Problem> {
  const things: Named[] = [];
  for (const file of await filesIn(folder, ".jsonl")) {
    const lines = (await readFile(file, "utf8")).split("\n");
    for (const [index, line] of lines.entries()) {
      if (line.trim() === "") continue;
      const thing = findJson(line) as Named | undefined;
      if (thing === undefined || !ID_PATTERN.test(thing.id ?? ""))
        return wrong(file, `line ${index + 1} is not a JSON object with an id`);
      things.push(thing);
    }
  }
  return things;
}

async function readPieces(folder: string): Promise<Seed["pieces"] | Problem> {
  const pieces: { id: Examination["id"]; piece: Piece }[] = [];
  for (const file of await filesIn(folder, ".json")) {
    const json = await readJson(file);
    if (isProblem(json)) return json;
    const { id, ...rest } = json as { readonly id?: unknown };
    if (typeof id !== "string" || !ID_PATTERN.test(id)) return wrong(file, "its id is missing or malformed");
    const piece = readPiece(rest);
    if (!("title" in piece)) return wrong(file, piece[0]?.message ?? "it is not a piece", piece[0]?.path);
    pieces.push({ id: id as Examination["id"], piece });
  }
  return pieces.sort(compareIds);
}

async function readJson(file: string): Promise<unknown> {
  const text = await readFile(file, "utf8").catch(() => undefined);
  if (text === undefined)
    return problem(
      "UNREADABLE_FILE",
      `The seed file ${file} cannot be read; bring seed-data back from the repository.`,
    );
  const value = findJson(text);
  return typeof value === "object" && value !== null ? value : wrong(file, "it is not a JSON object");
}

const wrong = (file: string, what: string, path: Problem["path"] = []): Problem =>
  problem("WRONG_FORMAT", `The seed file ${file} cannot be used: ${what}; correct it there.`, path);
