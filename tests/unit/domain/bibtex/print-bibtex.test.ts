import { describe, expect, it } from "vitest";
import { printBibtex } from "#server/domain/bibtex/print-bibtex.ts";
import type { CslItem } from "#server/domain/source.ts";

const BOOK: CslItem = {
  id: "source.saw-book",
  type: "book",
  title: "Saws & their marks",
  author: [{ family: "Example", given: "Ann" }, { literal: "Society of Saw and File Makers" }],
  issued: { "date-parts": [[1999, 4]] },
  publisher: "A Press",
  "publisher-place": "London",
  URL: "https://example.org/saws?a=1&b=50%25#marks_2",
};
/** The fields of a printed entry by name. */
const fieldsOf = (item: CslItem): Readonly<Record<string, string | undefined>> =>
  Object.fromEntries(
    [...printBibtex([item]).matchAll(/^ {2}(\w+) = \{(.*)\},$/gm)].map((line) => line.slice(1)),
  );

describe("a source as BibTeX", () => {
  it("[P42] is an entry of its type, known by its id, with names, year and place", () => {
    expect(printBibtex([BOOK])).toBe(`@book{saw-book,
  title = {{Saws \\& their marks}},
  author = {Example, Ann and {Society of Saw and File Makers}},
  year = {1999},
  month = {4},
  publisher = {A Press},
  address = {London},
  url = {https://example.org/saws?a=1&b=50%25#marks_2},
}
`);
  });

  it.each([
    ["article-journal", "article", "journal"],
    ["article-newspaper", "article", "journal"],
    ["chapter", "incollection", "booktitle"],
    ["entry-encyclopedia", "incollection", "booktitle"],
    ["paper-conference", "inproceedings", "booktitle"],
    ["webpage", "misc", "booktitle"],
  ])("[P42] has %s as %s, with what it stands in as %s", (type, entry, field) => {
    const item: CslItem = { ...BOOK, type, "container-title": "Journal of Tools" };
    expect(printBibtex([item])).toMatch(new RegExp(`^@${entry}\\{saw-book,`));
    expect(fieldsOf(item)[field]).toBe("Journal of Tools");
  });

  it("[P42] says of a patent what it is and where, with its number", () => {
    const fields = fieldsOf({ ...BOOK, type: "patent", jurisdiction: "United States", number: "51,735" });
    expect(fields).toMatchObject({ howpublished: "United States patent", number: "51,735" });
  });

  it.each([
    ["webpage", "Web page"],
    ["post-weblog", "Weblog post"],
    ["post", "Web post"],
    ["personal_communication", "Personal communication"],
  ])("[P42] says of a %s in words what it is", (type, words) => {
    expect(fieldsOf({ ...BOOK, type })["howpublished"]).toBe(words);
  });

  it("[P42] puts signs of TeX so that they are printed, and braces never end a field", () => {
    const { title, note } = fieldsOf({ ...BOOK, title: "50 % {of} a_b#c$", note: "a\\b ~ c^d" });
    expect(title).toBe("{50 \\% \\textbraceleft{}of\\textbraceright{} a\\_b\\#c\\$}");
    expect(note).toBe("a\\textbackslash{}b \\textasciitilde{} c\\textasciicircum{}d");
    expect(fieldsOf({ ...BOOK, URL: "https://example.org/{x}" })["url"]).toBe("https://example.org/%7Bx%7D");
  });

  it.each<[CslItem["issued"], string | undefined]>([
    [{ "date-parts": [[1950], [1953]] }, "1950--1953"],
    [{ raw: "2017 and 2021" }, "2017 and 2021"],
    [undefined, undefined],
  ])("[P42] has the year of %o as %s", (issued, year) => {
    const { issued: _, ...undated } = BOOK;
    expect(fieldsOf(issued === undefined ? undated : { ...undated, issued })["year"]).toBe(year);
  });

  it("[P42] sets pages apart by two hyphens", () => {
    expect(fieldsOf({ ...BOOK, page: "84–92, 101-3" })["pages"]).toBe("84--92, 101--3");
  });
});
