import { describe, expect, it } from "vitest";
import { citeSource } from "#server/domain/cite-source.ts";
import { MOST_LETTERS_OF_CSL, type ReadItem, readCsl } from "#server/domain/read-csl.ts";
import { SAW_BOOK } from "#tests/support/saw-graph.ts";

const { csl: BOOK } = SAW_BOOK;
const read = (items: unknown, known: Parameters<typeof readCsl>[1] = []): readonly ReadItem[] => {
  const found = readCsl(JSON.stringify(items), known);
  if (typeof found === "string") throw new Error(found);
  return found;
};
const refusalsOf = (item: unknown): readonly string[] => read(item)[0]?.refusals ?? [];

describe("a list of CSL-JSON", () => {
  it("[P43] is read item by item, each as we cite it, with the kind that follows from its type", () => {
    const [book, report] = read([BOOK, { ...BOOK, id: "report", type: "report" }]);
    expect(book).toEqual({ at: 1, text: citeSource(SAW_BOOK), kind: "book", csl: BOOK, refusals: [] });
    expect(report).toMatchObject({ at: 2, refusals: [] });
    expect(report?.kind).toBeUndefined();
  });

  it("[P43] can be one item alone", () => {
    expect(read(BOOK)).toHaveLength(1);
  });

  it("[P43] may have numbers for texts, and texts for years", () => {
    const item = {
      id: 7,
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
    expect(read(item)[0]?.csl).toMatchObject({ id: "7", volume: "42", issued: { "date-parts": [[1946]] } });
  });

  it.each([
    ["{", /not JSON/],
    ["", /not JSON/],
    ["[]", /empty/],
    [`"${"x".repeat(MOST_LETTERS_OF_CSL)}"`, /longer than 1,000,000/],
  ])("[P43] is refused as a whole where it is none: %.10s", (text, why) => {
    expect(readCsl(text, [])).toMatch(why);
  });

  it.each<[unknown, RegExp]>([
    [null, /not an item/],
    [["a"], /not an item/],
    [{ ...BOOK, type: undefined }, /no type/],
    [{ ...BOOK, type: "song" }, /type song is not read/],
    [{ ...BOOK, type: "constructor" }, /type constructor is not read/],
    [{ ...BOOK, title: " " }, /no title/],
    [{ ...BOOK, id: undefined }, /no id/],
    [{ ...BOOK, author: "Ann Example" }, /author cannot be read/],
    [{ ...BOOK, author: [{ family: 3 }] }, /author cannot be read/],
    [{ ...BOOK, editor: [{}] }, /editor cannot be read/],
    [{ ...BOOK, issued: "1923" }, /date cannot be read/],
    [{ ...BOOK, issued: { "date-parts": [["spring"]] } }, /date cannot be read/],
    [{ ...BOOK, issued: { raw: 1923 } }, /date cannot be read/],
    [{ ...BOOK, page: ["1", "2"] }, /page is not a text/],
  ])("[P43] has items that are refused, each with why and what to do: %j", (item, why) => {
    expect(refusalsOf([item])).toEqual([expect.stringMatching(why)]);
  });

  it("[P43] tells what stands in it twice and what is there already, by id, DOI or address", () => {
    const items = [BOOK, BOOK].map((item) => ({ ...item, URL: "" }));
    expect(read(items).map(({ refusals }) => refusals)).toEqual([
      [],
      [expect.stringMatching(/stands twice/)],
    ]);
    const item = { ...BOOK, id: "mine", DOI: "10.1/ABC" };
    const already = [expect.stringMatching(/already, as source\.saw/)];
    for (const known of [
      { id: "source.saw", DOI: "10.1/abc" },
      { id: "source.saw", URL: BOOK.URL },
    ])
      expect(read(item, [known])[0]?.refusals).toEqual(already);
    expect(read({ ...item, id: "saw" }, [{ id: "source.saw" }])[0]?.refusals).toEqual(already);
    expect(read(item, [{ id: "source.other", URL: "https://example.org/other" }])[0]?.refusals).toEqual([]);
  });
});
