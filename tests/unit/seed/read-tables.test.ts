import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readTables } from "#server/seed/read-tables.ts";

const row = (id: string, more: object = {}) =>
  JSON.stringify({
    ...{ id, table: "shrinkage", term: "material.ash", quantity: "radial shrinkage", value: 4.9 },
    ...{ strength: "usual", citations: [{ basis: "from memory" }], ...more },
  });

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "tables-"));
});
afterEach(() => rm(folder, { recursive: true }));

async function tableOf(...lines: readonly string[]): Promise<void> {
  await mkdir(join(folder, "tables"), { recursive: true });
  await writeFile(join(folder, "tables", "shrinkage.jsonl"), lines.join("\n"));
}

describe("reference tables", () => {
  it("are read by id, whatever the order of the lines", async () => {
    await tableOf(row("shrinkage.b"), "", row("shrinkage.a"));
    const rows = await readTables(folder);
    expect(rows).toMatchObject([{ id: "shrinkage.a" }, { id: "shrinkage.b", value: 4.9 }]);
  });

  it("may be missing", async () => {
    expect(await readTables(folder)).toEqual([]);
  });

  it.each([
    ["a line that is no JSON", "{", /shrinkage\.jsonl, line 2 cannot be used: .*write one row a line/],
    [
      "a row without a value",
      row("shrinkage.b", { value: undefined }),
      /line 2, shrinkage\.b .*The value must be/,
    ],
    [
      "a row of another table",
      row("movement.b", { table: "movement" }),
      /movement\.b .*write shrinkage or move/,
    ],
    ["a row that cites nothing", row("shrinkage.b", { citations: [] }), /shrinkage\.b .*add a citation/],
  ])("are refused with %s, by file, line, id and remedy", async (_, line, message) => {
    await tableOf(row("shrinkage.a"), line);
    expect(await readTables(folder)).toMatchObject({
      code: "WRONG_FORMAT",
      message: expect.stringMatching(message),
    });
  });
});
