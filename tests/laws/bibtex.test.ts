import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { printBibtex } from "#server/domain/bibtex/print-bibtex.ts";
import type { CslItem } from "#server/domain/source.ts";
import { readList } from "#server/domain/sources-in/read-list.ts";

const HARD = [
  "{",
  "}",
  "\\",
  "~",
  "^",
  "`",
  "'",
  '"',
  "-",
  "$",
  "&",
  "%",
  "#",
  "_",
  "@",
  ",",
  "=",
  "é",
  "Ø",
  "–",
];
/** Words of letters and of every sign that means something to TeX or BibTeX. */
const anyWords = fc
  .array(
    fc.oneof(
      fc.constantFrom(...HARD),
      fc.constantFrom("a", "B", " and ", "van ", "1", " "),
      fc.string({ unit: "grapheme", maxLength: 4 }),
    ),
  )
  .map((pieces) => `x${pieces.join("")}y`.normalize("NFC").replaceAll(/[\s\p{C}]+/gu, " "));
const anyName = fc.oneof(
  fc.record({ literal: anyWords }),
  fc.record({ family: anyWords, given: anyWords }),
  fc.record({ family: anyWords, given: anyWords, suffix: fc.constantFrom("Jr.", "III") }),
  fc.record({
    family: fc.constantFrom("Berg", "Tour"),
    given: anyWords,
    "dropping-particle": fc.constantFrom("van der", "de la"),
  }),
);
const anyDate = fc.oneof(
  fc.tuple(fc.integer({ min: 1000, max: 2100 })).map((date) => ({ "date-parts": [date] })),
  fc
    .tuple(
      fc.integer({ min: 1000, max: 2100 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 28 }),
    )
    .map((date) => ({ "date-parts": [date] })),
  fc.constant({ "date-parts": [[1873], [1876]] }),
  fc.constant({ raw: "about 1860" }),
);
const anyItem: fc.Arbitrary<CslItem> = fc.record(
  {
    id: fc.constant("source.key"),
    type: fc.constantFrom(
      "book",
      "article-journal",
      "article-newspaper",
      "chapter",
      "thesis",
      "report",
      "patent",
      "webpage",
      "manuscript",
    ),
    title: anyWords,
    author: fc.array(anyName, { minLength: 1, maxLength: 3 }),
    issued: anyDate,
    "container-title": anyWords,
    publisher: anyWords,
    "publisher-place": anyWords,
    volume: anyWords,
    number: anyWords,
    jurisdiction: anyWords,
    note: anyWords,
    DOI: fc.constant("10.1000/a_b(c)"),
    URL: fc.constant("https://example.org/a_b?c=%20d&e=1#f~g"),
  },
  { requiredKeys: ["id", "type", "title"] },
);

describe("BibTeX that we print", () => {
  it("[P42] [P44] read again is the same item", () => {
    fc.assert(
      fc.property(anyItem, (item) => {
        const patent = { ...item };
        // Of a patent the country is all of its place.
        if (patent.type === "patent") Reflect.deleteProperty(patent, "publisher-place");
        const read = readList(printBibtex([patent]), []);
        expect(typeof read === "string" ? read : (read[0]?.csl ?? read[0]?.refusals)).toEqual(patent);
      }),
      { numRuns: 1500 },
    );
  });

  it("[P44] any text is read to its end, and an entry is either whole or refused", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...HARD, "@book{", "title=", "\n", "a", "#", "(", ")"), { maxLength: 60 }),
        (pieces) => {
          const read = readList(`@book{k,title={T}}\n${pieces.join("")}`, []);
          expect(typeof read).toBe("object");
          for (const { csl, refusals } of read as Exclude<typeof read, string>)
            expect(csl === undefined).toBe(refusals.length > 0);
        },
      ),
      { numRuns: 1500 },
    );
  });
});
