import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { MOST_LETTERS_OF_CSV, readCsv } from "#server/formats/read-csv.ts";

/** Tables with what they say as JSON, from csv-spectrum 2.0.0 (BSD-2-Clause), made to try readers of CSV. */
const SPECTRUM = dirname(createRequire(import.meta.url).resolve("csv-spectrum"));
const NAMES = [
  ...["comma_in_quotes", "empty", "empty_crlf", "escaped_quotes", "json"],
  ...["newlines", "newlines_crlf", "quotes_and_newlines", "simple", "simple_crlf", "utf8"],
];

const asObjects = (text: string) => {
  const table = readCsv(text);
  if (!("head" in table)) throw new Error(table.map(({ message }) => message).join(" "));
  return table.rows.map(({ cells }) => Object.fromEntries(table.head.map((name, i) => [name, cells[i]])));
};
const told = (text: string) => {
  const table = readCsv(text);
  return "head" in table ? [] : table.map(({ code, path }) => [code, ...path]);
};

describe("a table of comma-separated values", () => {
  it.each(NAMES)("[J45] is read as csv-spectrum says: %s", (name) => {
    const text = readFileSync(join(SPECTRUM, "csvs", `${name}.csv`), "utf8");
    const wanted = JSON.parse(readFileSync(join(SPECTRUM, "json", `${name}.json`), "utf8"));
    expect(asObjects(text)).toEqual([wanted].flat());
  });

  it("[J45] keeps signs of seconds and inches as csv-spectrum does, whose other number there is another one in its JSON", () => {
    const text = readFileSync(join(SPECTRUM, "csvs", "location_coordinates.csv"), "utf8");
    const { "Contact Phone Number": _, ...wanted } = JSON.parse(
      readFileSync(join(SPECTRUM, "json", "location_coordinates.json"), "utf8"),
    );
    expect(asObjects(text)).toMatchObject([wanted]);
  });

  it("[J45] may begin with a byte order mark, be separated by semicolons or tabs, and end its lines in any way", () => {
    const wanted = [{ a: "1,5", b: "2" }];
    for (const text of ["\uFEFFa;b\r\n1,5;2\r\n", "a\tb\n1,5\t2", 'a,b\r"1,5",2\r', '"a";"b"\n"1,5";"2"\n'])
      expect(asObjects(text)).toEqual(wanted);
  });

  it("[J45] takes a quote inside a cell for a sign", () => {
    expect(asObjects('a,b\n3/4" board,"7"" deep"\n')).toEqual([{ a: '3/4" board', b: '7" deep' }]);
  });

  it("[J45] keeps the numbers of its rows where some are empty", () => {
    const table = readCsv("a,b\n,\n1,2\n");
    expect(table).toEqual({ head: ["a", "b"], rows: [{ row: 3, cells: ["1", "2"] }] });
  });

  it("[J45] is refused with the row, and what to do, where its quotes or its cells cannot be told", () => {
    expect(told('a,b\n1,2\n"3,4\n')).toEqual([["UNREADABLE_FILE", 3]]);
    expect(told('a,b\n"1"x,2\n')).toEqual([["UNREADABLE_FILE", 2]]);
    expect(told('a,b\n1 "x",2\n"1"x,2\n')).toEqual([["UNREADABLE_FILE", 3]]);
    expect(told("a,b\n1,2,3\n4,5\n6\n")).toEqual([
      ["WRONG_FORMAT", 2],
      ["WRONG_FORMAT", 4],
    ]);
  });

  it("[J45] is refused where it is no text, empty or too large: ten megabytes of quotes at once", () => {
    expect(told("\u0089PNG\u0000\u0001")).toEqual([["UNREADABLE_FILE"]]);
    expect(told("")).toEqual([["EMPTY_LIST"]]);
    expect(told(" , \n1,2")).toEqual([["EMPTY_LIST"]]);
    expect(told('"'.repeat(10_000_000))).toEqual([["TOO_LARGE"]]);
    expect(told('"'.repeat(MOST_LETTERS_OF_CSV - 1))).toEqual([["UNREADABLE_FILE", 1]]);
  });
});
