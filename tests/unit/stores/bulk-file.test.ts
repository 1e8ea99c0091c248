import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type BulkFile, openBulkFile } from "#server/stores/neo4j/bulk/bulk-file.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-bulk-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let last = 0;
/** The file that some rows make, and what was told of it. */
function written(put: (file: BulkFile) => void): { readonly text: string; readonly file: BulkFile } {
  const path = join(folder, `${++last}.csv`);
  const file = openBulkFile(path);
  put(file);
  file.close();
  return { text: readFileSync(path, "utf8"), file };
}

describe("[S72] a file of a bulk import", () => {
  it("gives a property its column when it first comes by, and the type of its value", () => {
    const { text, file } = written(({ put }) => {
      put([1], { name: "a", count: 2 });
      put([2], { count: 3, is: true, left: undefined }, { bytes: new Int8Array([-128, 0, 127]) });
    });
    expect(text).toBe("1\ta\t2\n2\t\t3\ttrue\t-128;0;127\n");
    expect(file.columns()).toEqual(["name:string", "count:long", "is:boolean", "bytes:byte[]"]);
    expect(file).toMatchObject({ rows: 2, hasLineFeeds: false, longest: 21 });
  });

  it("ends a row without properties with its numbers", () => {
    expect(written(({ put }) => put([3, 14], {})).text).toBe("3\t14\n");
  });

  it("puts signs around texts that are empty or hold signs of the file, and tells of line feeds", () => {
    const texts = ["", 'a "quote"', "a\ttab", "\u0001", "\r"];
    const { text, file } = written(({ put }) => {
      put([1], Object.fromEntries(texts.map((value, n) => [`p${n}`, value])));
    });
    const around = (value: string) => `\u0001${value}\u0001`;
    expect(text).toBe(
      `1\t${[around(""), 'a "quote"', around("a\ttab"), around("\u0001\u0001"), around("\r")].join("\t")}\n`,
    );
    expect(file.hasLineFeeds).toBe(true);
  });

  it("writes over a place that is still held, and one that is on the disk already", () => {
    const places: number[] = [];
    const { text } = written((file) => {
      for (let n = 0; n < 3_000; n++)
        places.push(file.put([n], { until: 2147483647 }, { body: "ü".repeat(400) }));
      for (const n of [0, 1_234, 2_999]) file.patch(places[n] as number, "0000000007");
    });
    const untils = text
      .trimEnd()
      .split("\n")
      .map((row) => row.split("\t")[1]);
    expect(untils.flatMap((until, n) => (until === "0000000007" ? [n] : []))).toEqual([0, 1_234, 2_999]);
    expect(new Set(untils).size).toBe(2);
  });

  it("holds a text that is longer than what is written at once", () => {
    const long = "é".repeat(900_000);
    const { text, file } = written(({ put }) => {
      put([1], { body: "short" });
      put([2], { body: long });
      put([3], { body: "short" });
    });
    expect(text).toBe(`1\tshort\n2\t${long}\n3\tshort\n`);
    expect(file.longest).toBe(1_800_003);
  });

  it("takes no value of another type into a column, and none that no column holds", () => {
    written((file) => {
      file.put([1], { name: "a" });
      expect(() => file.put([2], { name: 2 })).toThrow(/a long here and a string elsewhere/);
      expect(() => file.put([2], { part: 0.5 })).toThrow(/No column holds 0\.5/);
    });
  });
});
