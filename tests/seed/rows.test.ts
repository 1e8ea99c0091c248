import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed, type SeedGraph } from "./seed-graph.ts";

const textOf = (path: string) => readFileSync(fileURLToPath(new URL(path, import.meta.url)), "utf8");

/** Ids of all rows of the fact register; the basis of each stands behind it in the file. */
const register = textOf("../../seed-data/register-rows.txt")
  .trimEnd()
  .split("\n")
  .map((line) => line.replace(/ .*/, ""));
/** Rows that are left out, each with what it says and the reason. */
const leftOut = [...textOf("../../seed-data/not-modelled.md").matchAll(/^\| ([A-M]\d+) \|(.*)\|$/gm)].map(
  ([, row = "", cells = ""]) => ({ row, cells: cells.split(/(?<!\\)\|/).map((cell) => cell.trim()) }),
);
const seed = parseSeed(readSeedLines());

const rowsOf = (things: readonly { readonly row?: string }[]): ReadonlySet<string> =>
  new Set(things.flatMap(({ row }) => (row === undefined ? [] : [row])));

/** Rows that are on no claim, in no table and not left out. */
function unaccounted({ claims, tables }: SeedGraph, left = leftOut): readonly string[] {
  const there = new Set([...rowsOf(claims), ...rowsOf(tables), ...rowsOf(left)]);
  return register.filter((row) => !there.has(row));
}

/** Number of the row before the one at `i`; 0 before the first. */
const previous = (rows: readonly string[], i: number): number => Number(rows[i - 1]?.slice(1) ?? 0);

describe("the rows of the fact register", () => {
  it("stand once and in order, from 1 in each section; the one gap is that of the register itself", () => {
    const numbers = Map.groupBy(register, (row) => row.slice(0, 1));
    expect([...numbers.keys()].join("")).toBe("ABCDEFGHIJKLM");
    const jumps = [...numbers].flatMap(([section, rows]) =>
      rows.flatMap((row, i) => (row === `${section}${previous(rows, i) + 1}` ? [] : [row])),
    );
    expect(jumps).toEqual(["L240"]);
  });

  it("are each on a claim, in a table or left out with a reason", () => {
    expect(unaccounted(seed)).toEqual([]);
  });

  it("are missed when their claims, their table or their reason is dropped", () => {
    const claims = seed.claims.filter(({ row }) => row !== "A97");
    expect(unaccounted({ ...seed, claims })).toEqual(["A97"]);
    const tables = seed.tables.filter(({ row }) => row !== "H1");
    expect(unaccounted({ ...seed, tables })).toEqual(["H1"]);
    expect(unaccounted(seed, leftOut.slice(1))).toEqual([leftOut[0]?.row]);
  });

  it("are all known: no claim, table or reason names a row of nowhere", () => {
    const known = new Set(register);
    const named = new Set([...rowsOf(seed.claims), ...rowsOf(seed.tables), ...rowsOf(leftOut)]);
    expect([...named].filter((row) => !known.has(row))).toEqual([]);
  });

  it("are left out only if nothing else carries them, and each once", () => {
    const carried = new Set([...rowsOf(seed.claims), ...rowsOf(seed.tables)]);
    expect(leftOut.filter(({ row }) => carried.has(row))).toEqual([]);
    expect(rowsOf(leftOut).size).toBe(leftOut.length);
  });

  it("that are left out say what they say, and why they are left out", () => {
    const terse = leftOut.filter(({ cells }) => cells.length !== 2 || cells.some((cell) => cell.length < 5));
    expect(terse).toEqual([]);
  });

  it("that a reason names as modelled are modelled", () => {
    const carried = new Set([...rowsOf(seed.claims), ...rowsOf(seed.tables)]);
    const claims = new Set(seed.claims.map(({ id }) => id.replace("claim.", "")));
    const terms = new Set<string>(seed.terms.map(({ id }) => id));
    const dangling = leftOut.flatMap(({ row, cells: [, why = ""] }) =>
      [
        ...[...why.matchAll(/\b([A-M]\d+)\b(?!-)/g)].filter(([, other = ""]) => !carried.has(other)),
        ...[...why.matchAll(/\b((?:[A-M]\d+|age)-[a-z-]+)/g)].filter(([, id = ""]) => !claims.has(id)),
        ...[...why.matchAll(/\b((?:feature|material|form)\.[a-z0-9-]+)/g)].filter(
          ([, id = ""]) => !terms.has(id),
        ),
      ].map(([what]) => `${row} points to ${what}`),
    );
    expect(dangling).toEqual([]);
  });
});
