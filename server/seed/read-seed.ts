import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Change, Edit } from "../domain/change.ts";
import type { Claim } from "../domain/claim.ts";
import { compareIds } from "../domain/compare.ts";
import type { Examination, Piece } from "../domain/examination.ts";
import { ID_PATTERN } from "../domain/ids.ts";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import type { Source } from "../domain/source.ts";
import type { Term } from "../domain/term.ts";
import { findJson } from "../formats/find-json.ts";
import { readPiece } from "../formats/read-piece.ts";
import { checkSeed, type SeedLines } from "./check-seed.ts";
import { filesIn } from "./files-in.ts";
import { readRegister } from "./read-register.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { readTableLines } from "./read-tables.ts";
import type { SeedLine } from "./seed-line.ts";

/** What a new store starts with. */
export interface Seed {
  readonly change: Change;
  readonly at: string;
  readonly by: string;
  readonly message: string;
  readonly pieces: readonly { readonly id: Examination["id"]; readonly piece: Piece }[];
}

/**
 * Reads a folder of seed data: `revision.json` ({at, by, message}), `terms`, `claims` and `sources` with JSON Lines (one
 * thing a line) and `pieces` with one piece a file. The change has sources, terms and claims, each by id, so that the
 * same folder makes the same revision everywhere. A seed that `checkSeed` finds fault with is refused, by the file, line,
 * id and field of the first fault.
 */
export async function readSeed(folder: string): Promise<Seed | Problem> {
  const file = join(folder, "revision.json");
  const about = await readJson(file);
  if (isProblem(about)) return about;
  const { at, by, message } = about as Partial<Record<string, unknown>>;
  if (typeof at !== "string" || typeof by !== "string" || typeof message !== "string")
    return wrong(file, "it needs at, by and message, each a text");
  const lines = await readLines(folder);
  if (isProblem(lines)) return lines;
  const refusal = firstOf(checkSeed(lines));
  if (refusal !== undefined) return refusal;
  const pieces = await readPieces(join(folder, "pieces"));
  return isProblem(pieces) ? pieces : { change: changeOf(lines), at, by, message, pieces };
}

async function readLines(folder: string): Promise<SeedLines | Problem> {
  const sources = await readSeedLines<Source>(join(folder, "sources"));
  if (isProblem(sources)) return sources;
  const terms = await readSeedLines<Term>(join(folder, "terms"));
  if (isProblem(terms)) return terms;
  const claims = await readSeedLines<Claim>(join(folder, "claims"));
  if (isProblem(claims)) return claims;
  const rows = await readTableLines(folder);
  if (isProblem(rows)) return rows;
  const register = await readRegister(folder);
  return isProblem(register) ? register : { sources, terms, claims, rows, register };
}

function changeOf({ sources, terms, claims }: SeedLines): Change {
  const sorted = <Thing extends { readonly id: string }>(lines: readonly SeedLine<Thing>[]) =>
    lines.map(({ thing }) => thing).sort(compareIds);
  return [
    ...sorted(sources).map((after): Edit => ({ kind: "source", after })),
    ...sorted(terms).map((after): Edit => ({ kind: "term", after })),
    ...sorted(claims).map((after): Edit => ({ kind: "claim", after })),
  ];
}

/** The first of several problems; says how many more there are. */
function firstOf([first, ...more]: readonly Problem[]): Problem | undefined {
  if (first === undefined || more.length === 0) return first;
  const others = more.length === 1 ? "One more thing is" : `${more.length} more things are`;
  return { ...first, message: `${first.message} ${others} wrong with the seed.` };
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
