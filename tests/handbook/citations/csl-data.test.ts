import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { describe, expect, it } from "vitest";
import { printBibtex } from "#server/domain/bibtex/print-bibtex.ts";
import type { CslItem } from "#server/domain/source.ts";
import { readList } from "#server/domain/sources-in/read-list.ts";
import { readSeedLines } from "#tests/seed/read-seed-lines.ts";
import { parseSeed } from "#tests/seed/seed-graph.ts";

/*
 * csl-data.schema.json is schemas/input/csl-data.json of the Citation Style Language schema (repository
 * citation-style-language/schema, commit 0041266; MIT licence): what a program that reads CSL-JSON may expect. Its
 * pattern for EDTF asks for one sign anywhere, so that it is left to draft 7 as it is.
 */
const textOf = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");
const fits = new Ajv({ strict: false, allErrors: true }).compile(JSON.parse(textOf("csl-data.schema.json")));
const faultsOf = (items: readonly unknown[]) => {
  fits(items);
  return (fits.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
};

const items: readonly CslItem[] = parseSeed(readSeedLines()).sources.map(({ csl }) => csl);

function readBack(text: string): readonly CslItem[] {
  const read = readList(text, []);
  if (typeof read === "string") throw new Error(read);
  return read.map(({ csl, text: said, refusals }) => {
    if (csl === undefined) throw new Error(`${said}: ${refusals.map(({ why }) => why).join(" ")}`);
    return csl;
  });
}

describe("sources as CSL-JSON", () => {
  it("[P42] all of the seed graph are what the published schema asks for", () => {
    expect(items.length).toBeGreaterThan(600);
    expect(faultsOf(items)).toEqual([]);
  });

  it("[P44] those read from BibTeX are too", () => {
    expect(faultsOf(readBack(textOf("tricky-entries.bib")))).toEqual([]);
  });

  it("the schema finds an item out that it does not allow", () => {
    const [item] = items;
    expect(faultsOf([{ ...item, type: "poem" }])).not.toEqual([]);
    expect(faultsOf([{ ...item, pages: "1" }])).not.toEqual([]);
    expect(faultsOf([{ ...item, author: [{ name: "Ann" }] }])).not.toEqual([]);
  });
});

describe("sources as BibTeX", () => {
  /** Either dash parts the pages of a range. */
  const withHyphens = (item: CslItem): CslItem =>
    item.page === undefined ? item : { ...item, page: item.page.replaceAll("–", "-") };

  it("[P42] [P44] all of the seed graph, printed and read again, are the same items", () => {
    const read = readBack(printBibtex(items));
    expect(read.map(withHyphens)).toEqual(items.map(withHyphens));
  });
});
