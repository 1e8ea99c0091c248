import { describe, expect, it } from "vitest";
import { citeSource } from "#server/domain/cite-source.ts";
import type { KnownItem, ReadItem } from "#server/domain/sources-in/read-item.ts";
import { MOST_LETTERS_OF_LIST, readList } from "#server/domain/sources-in/read-list.ts";
import { SAW_BOOK } from "#tests/support/saw-graph.ts";

const { csl: BOOK } = SAW_BOOK;
const readText = (text: string, known: readonly KnownItem[] = []): readonly ReadItem[] => {
  const found = readList(text, known);
  if (typeof found === "string") throw new Error(found);
  return found;
};
const read = (items: unknown, known: readonly KnownItem[] = []): readonly ReadItem[] =>
  readText(JSON.stringify(items), known);
const saidOf = (item: ReadItem | undefined): readonly string[] =>
  (item?.refusals ?? []).map(({ field, why, remedy }) => `${field ?? "item"}: ${why} ${remedy}`);

describe("a list of sources", () => {
  it("[P43] is read item by item, each as it would be stored and cited, with the kind that follows from its type", () => {
    const [book, report] = read([BOOK, { ...BOOK, id: "report", type: "report", title: "Saws again" }]);
    expect(book).toMatchObject({ at: 1, text: citeSource(SAW_BOOK), kind: "book", csl: BOOK, refusals: [] });
    expect(book?.csl?.id).toBe("source.saw-book");
    expect(report).toMatchObject({ at: 2, refusals: [], csl: { id: "source.report" } });
    expect(report?.kind).toBeUndefined();
  });

  it("[P43] can be one item alone, and begin with a byte order mark", () => {
    expect(read(BOOK)).toHaveLength(1);
    expect(readText(`\uFEFF${JSON.stringify([BOOK])}`)).toHaveLength(1);
    expect(readText("\uFEFF@book{a, title = {Saws}}")[0]?.refusals).toEqual([]);
  });

  it("[P43] may have numbers for texts, and texts for years", () => {
    const item = {
      id: "seven",
      type: "article-journal",
      title: "On saws",
      volume: 42,
      page: 12,
      issued: { "date-parts": [["1946"]] },
    };
    expect(read(item)[0]).toMatchObject({
      refusals: [],
      kind: "article",
      text: "“On saws”, vol. 42, p. 12, 1946",
    });
    expect(read(item)[0]?.csl).toMatchObject({ volume: "42", issued: { "date-parts": [[1946]] } });
  });

  it("[P43] tells the line on which each item begins", () => {
    const text = `[\n  {"id": "a", "type": "book", "title": "[{,"},\n\n  {"id": "b",\n "type": "book", "title": "B"}, 3\n]`;
    expect(readText(text).map(({ line }) => line)).toEqual([2, 4, 5]);
    expect(
      readText("\n\n@book{a, title={A}} @book{b,\n title={B}}\n@book{c, title={C}}").map(({ line }) => line),
    ).toEqual([3, 3, 5]);
  });

  it.each([
    ["{", /not whole JSON/],
    ['[{"id": "a", "type": "book", "title": "Ha', /not whole JSON/],
    ["", /no entry in this/],
    ["Dear colleague, a@b.example wrote.", /no entry in this/],
    ["[]", /empty/],
    [`"${"x".repeat(MOST_LETTERS_OF_LIST)}"`, /longer than 5,000,000/],
    ["\u0089PNG\u0000\u0000", /not a text/],
    ["@book{a,\u0000title={A}}", /not a text/],
  ])("[P43] is refused as a whole where it is none: %.20j", (text, why) => {
    expect(readList(text, [])).toMatch(why);
  });

  it.each<[unknown, RegExp]>([
    [null, /item: It is not an item/],
    [["a"], /item: It is not an item/],
    [{ ...BOOK, type: undefined }, /type: It has no type/],
    [{ ...BOOK, type: "song" }, /type: Items of type song are not read/],
    [{ ...BOOK, type: "constructor" }, /Items of type constructor are not read/],
    [{ ...BOOK, title: " " }, /title: It has no title/],
    [{ ...BOOK, id: undefined }, /item: It has no id/],
    [{ ...BOOK, author: "Ann Example" }, /author: It cannot be read/],
    [{ ...BOOK, author: [{ family: 3 }] }, /author: It cannot be read/],
    [{ ...BOOK, editor: [{}] }, /editor: It cannot be read/],
    [{ ...BOOK, issued: "1923" }, /issued: It cannot be read as a date/],
    [{ ...BOOK, issued: { "date-parts": [] } }, /issued: It cannot be read as a date/],
    [{ ...BOOK, issued: { "date-parts": [["spring"]] } }, /issued: It cannot be read as a date/],
    [{ ...BOOK, issued: { raw: 1923 } }, /issued: It cannot be read as a date/],
    [{ ...BOOK, page: ["1", "2"] }, /page: It is not a text/],
  ])("[P43] has items that are refused, each with field, why and what to do: %j", (item, why) => {
    const [found] = read([item]);
    expect(saidOf(found)).toEqual([expect.stringMatching(why)]);
    expect(found?.csl).toBeUndefined();
  });

  it("[P43] refuses what has a name that stands in it already, and says where", () => {
    const items = [BOOK, { ...BOOK, title: "Another" }];
    const [first, second] = readText(JSON.stringify(items, null, 1));
    expect(first?.refusals).toEqual([]);
    expect(saidOf(second)).toEqual([expect.stringMatching(/saw-book stands in line 2 already/)]);
  });
});

describe("an item that may be there already", () => {
  const item = {
    ...BOOK,
    id: "mine",
    title: "Of Sägen",
    DOI: "10.1/ABC",
    ISBN: "0-306-40615-2",
    URL: "https://www.example.org/mine/",
  };
  const standing = (known: Omit<KnownItem, "id">, of: unknown = item) =>
    read(of, [{ id: "source.other", ...known }])[0]?.standing;

  it.each<[string, Omit<KnownItem, "id">]>([
    ["DOI", { DOI: "https://doi.org/10.1/abc" }],
    ["ISBN", { ISBN: "978 0 306 40615 7" }],
    ["address", { URL: "http://example.org/mine" }],
    ["title and year", { title: "of Sagen.", issued: BOOK.issued }],
  ])("[P43] is known by its %s", (same, known) => {
    expect(standing(known)).toEqual({ id: "source.other", same });
  });

  it("[P43] is another where none of these is the same", () => {
    expect(
      standing({ DOI: "10.1/abd", ISBN: "978-0-306-40616-4", URL: "https://example.org/other" }),
    ).toBeUndefined();
    expect(standing({ title: "Of Sägen", issued: { "date-parts": [[1911]] } })).toBeUndefined();
    expect(standing({ title: "Of Sägen" })).toBeUndefined();
    // A chapter has the number of its book.
    expect(standing({ ISBN: item.ISBN }, { ...item, type: "chapter" })).toBeUndefined();
  });

  it("[P43] is known by its id only where the title is the same; another gets an id of its own", () => {
    const known = { id: "source.mine", title: "Of Sägen" };
    expect(read(item, [known])[0]?.standing).toEqual({ id: "source.mine", same: "id and title" });
    const [other] = read({ ...item, title: "On planes" }, [known]);
    expect(other?.standing).toBeUndefined();
    expect(other?.csl?.id).toBe("source.mine-2");
  });

  it("[P43] can be an entry before it in the list", () => {
    const [, second] = read([item, { ...item, id: "again" }]);
    expect(second?.standing).toEqual({ id: "source.mine", at: 1, same: "DOI" });
  });
});

describe("what is said of an item beside its citation", () => {
  it.each([
    ["Forman1985", "source.forman1985"],
    ["source.forman-1985", "source.forman-1985"],
    ["http://example.org/users/12/ABC", "source.example-1999"],
    ["12", "source.example-1999"],
    ["Ærø:Ståhl", "source.aero-stahl"],
  ])("[P43] %s would be stored as %s", (key, id) => {
    expect(read({ ...BOOK, id: key })[0]?.csl?.id).toBe(id);
  });

  it("[P43] what has neither key nor name is called by its title", () => {
    const { author: _, ...anonymous } = BOOK;
    expect(read({ ...anonymous, id: "1" })[0]?.csl?.id).toBe("source.saws-and-their-marks");
  });

  it.each<[string, readonly string[]]>([
    ["book", ["author or editor", "year", "publisher or place"]],
    ["article-journal", ["author or editor", "year", "journal"]],
    ["chapter", ["author or editor", "year", "book that it stands in"]],
    ["thesis", ["author or editor", "year", "university"]],
    ["patent", ["author or editor", "year", "number", "country"]],
    ["webpage", ["year", "address"]],
    ["legislation", ["year"]],
  ])("[P43] of a %s without anything it says what is missing", (type, missing) => {
    expect(read({ id: "a", type, title: "A" })[0]?.missing).toEqual(missing);
  });

  it("[P43] of a whole one nothing is missing", () => {
    expect(read({ ...BOOK, publisher: "A Press" })[0]?.missing).toEqual([]);
  });
});
