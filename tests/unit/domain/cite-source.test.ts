import { describe, expect, it } from "vitest";
import { citeSource } from "#server/domain/cite-source.ts";
import type { CslItem } from "#server/domain/source.ts";
import { aSource } from "#tests/support/build-graph.ts";

// Invented works: only the form of the line is tested.
describe("[G31] a source in one line", () => {
  const rows: readonly [Omit<CslItem, "id">, string][] = [
    [
      {
        type: "book",
        title: "The Joiner's Bench",
        author: [{ family: "Alder", given: "Ann" }],
        publisher: "Plane Press",
        "publisher-place": "London",
        issued: { "date-parts": [[1901, 5]] },
      },
      "Ann Alder, The Joiner's Bench, London: Plane Press, 1901",
    ],
    [
      {
        type: "article-journal",
        title: "On Saws",
        author: [{ family: "Alder", given: "Ann" }, { literal: "The Bench Club" }],
        "container-title": "Journal of Benches",
        volume: "12",
        issue: "3",
        page: "40-52",
        issued: { "date-parts": [[1990]] },
      },
      "Ann Alder and The Bench Club, “On Saws”, Journal of Benches 12, no. 3, pp. 40–52, 1990",
    ],
    [
      {
        type: "chapter",
        title: "Nails",
        author: [{ family: "Alder" }, { family: "Birch" }, { family: "Cedar" }],
        editor: [{ family: "Deal", given: "D." }],
        "container-title": "Iron in Wood",
        page: "7",
        issued: { "date-parts": [[1988], [1990]] },
      },
      "Alder, Birch and Cedar, “Nails”, in D. Deal (ed.), Iron in Wood, p. 7, 1988–1990",
    ],
    [
      {
        type: "book",
        title: "Woods",
        editor: [
          { family: "Deal", given: "D." },
          { family: "Elm", given: "E." },
        ],
        volume: "II",
      },
      "D. Deal and E. Elm (eds), Woods, vol. II, undated",
    ],
    [
      {
        type: "book",
        title: "Many Hands",
        author: ["A", "B", "C", "D"].map((family) => ({ family })),
        issued: { raw: "1840s" },
      },
      "A and others, Many Hands, 1840s",
    ],
    [
      {
        type: "patent",
        title: "Sawing machine",
        author: [{ family: "Oak", given: "O." }],
        jurisdiction: "Great Britain",
        number: "1152",
        issued: { "date-parts": [[1777, 4, 11]] },
      },
      "O. Oak, Sawing machine, Great Britain patent 1152, 11 April 1777",
    ],
    [
      { type: "legislation", title: "Act on Timber", jurisdiction: "Great Britain", number: "9 Geo. 1 c. 8" },
      "Act on Timber, Great Britain, 9 Geo. 1 c. 8, undated",
    ],
    [
      {
        type: "webpage",
        title: "Saw marks",
        author: [{ literal: "A Museum" }],
        "container-title": "museum.example",
      },
      "A Museum, “Saw marks”, museum.example, undated",
    ],
    [{ type: "book" }, "source.x, undated"],
    [
      {
        type: "book",
        title: "Woods of the World",
        author: [{ family: "Berg", given: "Jan", "dropping-particle": "van der", suffix: "Jr." }],
        translator: [{ family: "Elm", given: "E." }],
        edition: "3",
        "collection-title": "Bench Books",
        "collection-number": "4",
        page: "12",
        publisher: "Plane Press",
        issued: { "date-parts": [[1901, 5, 2]] },
      },
      "Jan van der Berg Jr., Woods of the World, trans. E. Elm, 3rd ed., Bench Books 4, Plane Press, 1901",
    ],
    [{ type: "book", title: "Woods", edition: "Eleventh edition" }, "Woods, Eleventh edition, undated"],
    [
      {
        type: "thesis",
        title: 'The “Bench” and the "Plane"',
        author: [{ family: "Alder" }],
        genre: "PhD thesis",
        publisher: "University of Deal",
        issued: { "date-parts": [[2001]] },
      },
      "Alder, “The ‘Bench’ and the ‘Plane’”, PhD thesis, University of Deal, 2001",
    ],
    [
      {
        type: "article-newspaper",
        title: "Wire Nails",
        "container-title": "The Deal Times",
        volume: "XVI",
        issue: "45",
        issued: { "date-parts": [[1892, 11, 25]] },
      },
      "“Wire Nails”, The Deal Times XVI, no. 45, 25 November 1892",
    ],
    [
      { type: "post", title: "Letter of 4 May 1820", issued: { "date-parts": [[1820, 5, 4]] } },
      "“Letter of 4 May 1820”, 1820",
    ],
    [{ type: "report", title: "Tech Note A-200", number: "A-200", page: "4-4" }, "Tech Note A-200, undated"],
    [
      { type: "report", title: "Casein", number: "280", issued: { "date-parts": [[1961, 3, 1]] } },
      "Casein, no. 280, 1 March 1961",
    ],
  ];
  it.each(rows)("%j", (csl, line) => {
    expect(citeSource(aSource("source.x", { csl: { id: "source.x", ...csl } as CslItem }))).toBe(line);
  });
});
