import { beforeAll, describe, expect, it } from "vitest";
import { checkReferenceRows } from "#server/domain/check-reference-rows.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { ReferenceRow } from "#server/domain/reference-row.ts";
import { readTables } from "#server/seed/read-tables.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { asGraph, parseSeed } from "./seed-graph.ts";

const seed = parseSeed(readSeedLines());
let rows: readonly ReferenceRow[];

beforeAll(async () => {
  const read = await readTables("seed-data");
  if (isProblem(read)) throw new Error(read.message);
  rows = read;
});

const numberOf = (row: ReferenceRow): number => {
  if (!("value" in row) || typeof row.value !== "number") throw new Error(`${row.id} is no number`);
  return row.value;
};
/** Numbers of one quantity by term, in one table. */
const numbersOf = (table: string, quantity: RegExp): ReadonlyMap<string, readonly number[]> => {
  const found = rows.filter((row) => row.table === table && quantity.test(row.quantity));
  const byTerm = Map.groupBy(found, ({ term }) => term as string);
  return new Map([...byTerm].map(([term, of]) => [term, of.map(numberOf)]));
};

describe("the reference tables of the seed", () => {
  it("can be read, and name only what is in the graph", () => {
    expect(checkReferenceRows(rows, asGraph(seed))).toEqual([]);
  });

  it("name a row of the fact register, or say where they come from", () => {
    const bare = rows.filter(({ row, note }) => row === undefined && note === undefined);
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  it("keep rival values of mahogany side by side", () => {
    const mahogany = ["honduras", "cuban"].map((kind) => `material.${kind}-mahogany`);
    const tangential = numbersOf("shrinkage", /^tangential/);
    const values = ["material.mahogany", ...mahogany].flatMap((term) => tangential.get(term) ?? []);
    expect(values.sort()).toEqual([4.1, 4.3, 4.6, 5, 5.1]);
  });
});

describe("shrinkage and movement", () => {
  it("is greater along the rings than across them in every wood, as the handbook says of all", () => {
    const radial = numbersOf("shrinkage", /^radial shrinkage, /);
    const tangential = numbersOf("shrinkage", /^tangential/);
    expect(radial.size).toBeGreaterThan(50);
    for (const [wood, values] of radial)
      for (const value of values)
        expect(
          tangential.get(wood)?.every((other) => other > value),
          wood,
        ).toBe(true);
  });

  it("has coefficients that follow from total shrinkage by the formula of the handbook, where both are given", () => {
    const coefficients = rows.filter(({ table }) => table === "movement");
    const shrinkage = new Map(rows.filter(({ table }) => table === "shrinkage").map((row) => [row.id, row]));
    let compared = 0;
    for (const row of coefficients) {
      const total = shrinkage.get(row.id.replace("movement.", "shrinkage.") as ReferenceRow["id"]);
      if (total === undefined || row.id.includes("teak")) continue;
      const percent = numberOf(total);
      const expected = percent / 3000 / (1 - percent / 150);
      expect(Math.abs(numberOf(row) - expected), row.id).toBeLessThan(0.00002);
      compared++;
    }
    expect(compared).toBeGreaterThan(90);
  });

  it("gives the moisture content that the printed equation gives, within its rounding", () => {
    const cells = rows.filter(({ id }) => /^moisture\.emc-\d+f-\d+rh$/.test(id));
    expect(cells.length).toBe(28);
    for (const row of cells) {
      const [, fahrenheit, humidity] = /emc-(\d+)f-(\d+)rh/.exec(row.id) ?? [];
      const computed = moistureAt(Number(fahrenheit), Number(humidity) / 100);
      expect(Math.abs(computed - numberOf(row)), row.id).toBeLessThanOrEqual(0.07);
    }
  });
});

/** Equilibrium moisture content in per cent at a temperature in °F, as in the rows `equations.emc-fahrenheit`. */
function moistureAt(t: number, h: number): number {
  const w = 330 + 0.452 * t + 0.00415 * t ** 2;
  const k = 0.791 + 0.000463 * t - 0.000000844 * t ** 2;
  const k1 = 6.34 + 0.000775 * t - 0.0000935 * t ** 2;
  const k2 = 1.09 + 0.0284 * t - 0.0000904 * t ** 2;
  const kh = k * h;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2));
}

describe("marks of registered designs", () => {
  it("give each letter one year within a pattern, and leave no year out", () => {
    for (const [pattern, first, last] of [
      ["first", 1842, 1867],
      ["second", 1868, 1883],
    ] as const) {
      const letters = rows.filter(({ id }) => id.startsWith(`registration-marks.${pattern}-year-`));
      const years = letters.map(numberOf).sort();
      expect(years).toEqual(Array.from({ length: last - first + 1 }, (_, i) => first + i));
    }
  });
});
