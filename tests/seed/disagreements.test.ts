import { describe, expect, it } from "vitest";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed, type SeedGraph } from "./seed-graph.ts";

const seed = parseSeed(readSeedLines());

/**
 * Where sources differ, each keeps its own claim. By subject of the quarrel, rows of the fact register that must stand
 * side by side; `not` are views kept as rejected, with their reason.
 */
const QUARRELS: Readonly<
  Record<string, { readonly rows: readonly string[]; readonly not?: readonly string[] }>
> = {
  "the band saw, from its patent to its common use": {
    rows: ["A19", "A21", "A22", "A23", "A24", "A82", "A83"],
  },
  "the circular saw": { rows: ["A6", "A7", "A8", "A9", "A10", "A11", "A13", "A14", "A79"], not: ["A77"] },
  "the veneer frame saw, 1799 or 1805": { rows: ["A96", "A97"] },
  "the veneer circular saw": { rows: ["A35", "A92", "A102"], not: ["A36", "A94"] },
  "sliced veneer as a common thing": { rows: ["A46", "A107", "A108"] },
  "rotary veneer": { rows: ["A41", "A42", "A44", "A104"] },
  "nails cut and headed by machine": { rows: ["B8", "B9", "B72", "B73", "B76", "B83"], not: ["B74"] },
  "fibre along the shank": { rows: ["B12", "B13", "B78"] },
  "wire nails": { rows: ["B20", "B23", "B86", "B87", "B88"], not: ["B22"] },
  "the pointed screw": { rows: ["B42", "B43", "B45", "B47", "B48"], not: ["B107"] },
  "the pin-and-cove joint": { rows: ["C37", "C38", "C39", "C40", "C41"] },
  "the quarter turn of the drawer bottom": { rows: ["C10", "C11", "C12", "C55"] },
  "pressed glass knobs, 1825 or 1826": { rows: ["D18", "D19"] },
  "chipboard, United States or Bremen": { rows: ["E37", "E38"] },
  "hardboard, 1898 or the 1920s": { rows: ["E35", "E36", "E77"] },
  "the first planing machine": { rows: ["A26", "A55", "A130"], not: ["A87"] },
  "shellac before French polishing": { rows: ["F3", "F5", "F7"], not: ["F43"] },
  "shellac as the finish of factories": { rows: ["F9", "F45"] },
  "the silvered mirror and the end of amalgam": { rows: ["E52", "E53", "E100", "E101", "E104"] },
  "the coil spring": { rows: ["E55", "E56", "E105", "E106"] },
  "marks of origin and the words “made in”": { rows: ["D57", "D60", "D63", "D100"], not: ["D58", "D61"] },
  "the Parisian stamp": { rows: ["D64", "D65", "D103", "D104", "L114"], not: ["D67"] },
  "the first American list of prices": { rows: ["G95", "K30", "K31"] },
  "cast looking-glass plates in Britain": { rows: ["E45", "E91", "E92"] },
  "a surface that does not glow": { rows: ["F20"], not: ["F23"] },
  "colonial work of New Mexico": { rows: ["K266", "K270"], not: ["K271"] },
  "abrasive paper": { rows: ["A116", "A117", "A119"], not: ["A118"] },
};

function missingFrom(graph: SeedGraph, rows: readonly string[], status: string): readonly string[] {
  const there = new Set(graph.claims.flatMap((claim) => (claim.status === status ? [claim.row] : [])));
  return rows.filter((row) => !there.has(row));
}

describe("sources that disagree", () => {
  it.each(Object.entries(QUARRELS))("stand side by side on %s", (_, { rows, not = [] }) => {
    expect(missingFrom(seed, rows, "accepted")).toEqual([]);
    expect(missingFrom(seed, not, "rejected")).toEqual([]);
  });

  it("are missed when one of them is dropped", () => {
    const claims = seed.claims.filter(({ row }) => row !== "A97");
    expect(missingFrom({ ...seed, claims }, ["A96", "A97"], "accepted")).toEqual(["A97"]);
  });
});

describe("values that disagree", () => {
  it.each([
    ["mahogany", "shrinkage", ["H31", "H33", "H68", "H69"]],
    ["mahogany", "movement", ["H31", "H68", "H69", "H70"]],
    ["British oak", "tree-rings", ["I2", "I3", "I4", "I5", "I21"]],
    ["veneer sawn by hand", "veneer", ["A33", "A34", "A89"]],
    ["veneer sawn by disc", "veneer", ["A37", "A38", "A95"]],
    ["old round tops", "equations", ["H60", "H61", "H91", "H92"]],
  ])("stand side by side on %s in the table %s", (_, table, rows) => {
    const there = new Set(seed.tables.flatMap((row) => (row.table === table ? [row.row] : [])));
    expect(rows.filter((row) => !there.has(row))).toEqual([]);
  });
});

describe("dates of different kinds", () => {
  const relationsOf = (subject: string): ReadonlySet<string> =>
    new Set(
      seed.claims.flatMap((claim) =>
        "subject" in claim && claim.subject === subject && claim.status === "accepted"
          ? [claim.relation]
          : [],
      ),
    );

  it("are not merged: a patent, common use and the end of use are claims of their own", () => {
    expect(relationsOf("tool.band-saw")).toEqual(
      new Set(["introduced", "attested", "common from", "requires"]),
    );
    expect(relationsOf("tool.thread-rolling-machine-of-1890")).toEqual(new Set(["introduced"]));
    expect(relationsOf("hardware.hand-forged-nail")).toEqual(new Set(["common until", "requires"]));
  });
});
