import { describe, expect, it } from "vitest";
import type { ReadItem } from "#server/domain/sources-in/read-item.ts";
import { MOST_LETTERS_OF_LIST, readList } from "#server/domain/sources-in/read-list.ts";

function read(text: string): readonly ReadItem[] {
  const found = readList(text, []);
  if (typeof found === "string") throw new Error(found);
  return found;
}
/** Each entry in a line: its title if it is taken, else line, field and why. */
const outcomes = (text: string): readonly string[] =>
  read(text).map(({ csl, refusals }) =>
    csl === undefined
      ? refusals.map(({ line, field, why }) => `${line} ${field ?? "-"}: ${why}`).join(" | ")
      : `${csl.title}`,
  );
const itemOf = (entry: string): Readonly<Record<string, unknown>> => read(entry)[0]?.csl ?? {};

describe("a file of BibTeX", () => {
  it("[P44] has entries between braces or parentheses, with comments around them", () => {
    const text = `Written by me@example.org.
% @book{not, title = {Commented out}}
@comment{@book{nor, title = {This}}}
@preamble{ "\\newcommand{\\x}{@book{y, title={Z}}}" }
@Book{one, TITLE = "One", Year = 1900}
@ARTICLE( two, title = {Two (2)}, % what is behind the sign is set aside
  year = {1901},
)
@misc{three:3(a), title = {Three},,}`;
    expect(outcomes(text)).toEqual(["One", "Two (2)", "Three"]);
  });

  it("[P44] joins what # parts, with abbreviations that were defined before", () => {
    const text = `@string{fh = "Furniture " # "History"} @STRING(vol = {12})
@article{a, title = "{The} " # {Saw}, journal = FH # { (London)}, volume = vol, month = feb, year = 1977}`;
    expect(itemOf(text)).toMatchObject({
      title: "The Saw",
      "container-title": "Furniture History (London)",
      volume: "12",
      issued: { "date-parts": [[1977, 2]] },
    });
  });

  it("[P44] gives a part what its whole says, by crossref", () => {
    const text = `@incollection{part, crossref = {Whole}, title = {Part}, pages = {1--2}}
@book{whole, title = {The Whole}, editor = {Deal, D.}, publisher = {Press}, year = 1990, pages = {400}, isbn = {1}}`;
    const item = itemOf(text);
    expect(item).toMatchObject({
      ...{ type: "chapter", title: "Part", "container-title": "The Whole", publisher: "Press", page: "1-2" },
      editor: [{ family: "Deal", given: "D." }],
    });
    expect(outcomes("@inbook{p, crossref={none}, title={P}}")).toEqual([
      "1 crossref: No entry here is called none.",
    ]);
  });

  it("[P44] says which fields would not be kept", () => {
    const [item] = read("@book{a, title={A}, keywords={x}, file={y}, abstract={Kept}, day=3, year=1900}");
    expect(item?.leftOut).toEqual(["keywords", "file"]);
  });

  it("[P44] reads an address as it stands, and finds it where older files have it", () => {
    expect(itemOf("@misc{a, title={A}, url={https://example.org/a_b\\_c%20~d}}")["URL"]).toBe(
      "https://example.org/a_b_c%20~d",
    );
    expect(itemOf("@misc{a, title={A}, howpublished={\\url{https://example.org/a}}}")).toMatchObject({
      type: "webpage",
      URL: "https://example.org/a",
    });
    expect(itemOf("@misc{a, title={A}, doi={https://doi.org/10.1/x_y}}")["DOI"]).toBe("10.1/x_y");
  });

  it.each([
    ["@phdthesis{a, title={A}, school={Leeds}}", { type: "thesis", genre: "PhD thesis", publisher: "Leeds" }],
    ["@thesis{a, title={A}, type={thesis}}", { type: "thesis" }],
    [
      "@techreport{a, title={A}, number=7, institution={Lab}}",
      { type: "report", number: "7", publisher: "Lab" },
    ],
    ["@article{a, title={A}, number=7, entrysubtype={magazine}}", { type: "article-magazine", issue: "7" }],
    ["@article{a, title={A}, eid={574}}", { type: "article-journal", number: "574" }],
    ["@book{a, title={A}, series={S}, number=7}", { "collection-title": "S", "collection-number": "7" }],
    [
      "@patent{a, title={A}, number=7, location={France}}",
      { type: "patent", number: "7", jurisdiction: "France" },
    ],
    ["@book{a, title={A}, address={Bath}}", { "publisher-place": "Bath" }],
    ["@booklet{a, title={A}, howpublished={By hand}}", { type: "pamphlet", publisher: "By hand" }],
    ["@unheard{a, title={A}}", { type: "document" }],
  ])("[P44] %s", (entry, fields) => {
    expect(itemOf(entry)).toMatchObject(fields);
  });
});

describe("a broken entry of BibTeX", () => {
  const GOOD = "\n@book{good, title = {Good}, year = 1900}\n";

  it.each([
    [
      "a brace never closed",
      "@book{a,\n  title = {Half,\n  year = {1990},",
      /^2 title: What opens in line 2 never closes/,
    ],
    [
      "a brace closed by the end of the entry",
      "@book{a,\n  title = {Half,\n  year = {1990}\n}",
      /^2 title: Behind its value stands “@”/,
    ],
    [
      "a quotation never closed",
      '@book{a,\n title = "Half,\n year = 1990}',
      /^2 title: What opens in line 2 never closes/,
    ],
    [
      "an entry never closed",
      "@book{a,\n title = {Half}",
      /^2 title: Behind its value stands “@”, in line \d/,
    ],
    [
      "a brace too many",
      "@book{a,\n title = {Half}},\n year = {1990}\n}",
      /^2 title: It is closed in line 2, but goes on/,
    ],
    [
      "no comma",
      "@book{a,\n title = {Half}\n year = {1990}}",
      /^2 title: Behind its value stands “y”, in line 3/,
    ],
    ["no equals sign", "@book{a,\n title {Half}}", /^2 title: No = follows its name/],
    ["no value", "@book{a, title = , year = 1990}", /^1 title: It has no value/],
    ["no key", "@book{title = {Half}}", /^1 -: It has no key/],
    ["a key with a space", "@book{a b, title = {Half}}", /^1 -: No comma follows the key a/],
    ["no brace", "@book a, title = {Half}", /^1 -: No brace follows @book/],
    [
      "an abbreviation nobody defined",
      "@book{a,\n\n title = jhm}",
      /^3 title: The abbreviation jhm is not defined/,
    ],
    [
      "a field twice",
      "@book{a, title={A},\n title={B}}",
      /^2 title: It stands in line 1 already, with another value/,
    ],
    [
      "a command nobody knows",
      "@book{a, title={A},\n publisher={\\foo}}",
      /^2 publisher: \\foo is not understood/,
    ],
    ["names that are none", "@book{a, title={A},\n author={A and and B}}", /^2 author: There is no name/],
    ["no title", "@book{a, year = 1900}", /^1 title: It has no title/],
    ["a definition that is none", "@string{fh = }", /^1 fh: It has no value/],
  ])("[P44] with %s is refused with line and field, and the next is read", (_, broken, why) => {
    const [first, second, ...more] = outcomes(broken + GOOD);
    expect(first).toMatch(why);
    expect([second, ...more]).toEqual(["Good"]);
    const [item] = read(broken + GOOD);
    expect(item?.refusals.every(({ remedy }) => remedy.endsWith("."))).toBe(true);
    expect(item?.csl).toBeUndefined();
  });

  it("[P44] at the end of the text is half an entry", () => {
    expect(outcomes(`${GOOD}@book{a,\n title = {Half},\n`)[1]).toMatch(/The text ends inside this entry/);
    expect(outcomes(`${GOOD}@book{a,\n title = {Ha`)[1]).toMatch(
      /^4 title: What opens in line 4 never closes/,
    );
    expect(outcomes(`${GOOD}@book{`)[1]).toMatch(/It has no key/);
  });

  it("[P44] costs no other entry, however many there are", () => {
    const text = Array.from({ length: 40 }, (_, index) =>
      index % 2 === 0 ? `@book{k${index}, title = {Half\n` : `@book{k${index}, title = {T${index}}}\n`,
    ).join("");
    expect(outcomes(text).filter((line) => /^T\d+$/.test(line))).toHaveLength(20);
  });

  it("[P44] a key stands once, in whatever capitals", () => {
    expect(outcomes("@book{a, title={A}}\n@book{A, title={B}}")[1]).toMatch(
      /name A stands in line 1 already/,
    );
  });

  it.each([
    ["braces", "{"],
    ["entries that never close", "@a{b,c={"],
    ["entries on lines of their own", "@a{b,c={\n"],
    ["quotation marks", '@a{b,c="'],
    ["comments", "@comment{"],
    ["joins", "@a{b,c=d#"],
    ["names", "@book{b, title={T}, author={A and "],
    ["accents", "@book{b,title={\\'"],
  ])("[P44] is answered soon where it is very long: %s", (_, piece) => {
    const text = piece.repeat(Math.floor(400_000 / piece.length));
    // A reader that goes back for every brace would not end before the test is given up.
    expect(readList(text, [])).toBeDefined();
  });

  it("[P43] is refused where it is longer than what is read", () => {
    expect(readList(GOOD.repeat(MOST_LETTERS_OF_LIST / GOOD.length + 1), [])).toMatch(/longer than/);
  });
});
