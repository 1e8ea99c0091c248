import { describe, expect, it } from "vitest";
import { readNames } from "#server/domain/bibtex/read-names.ts";
import type { CslName } from "#server/domain/source.ts";

const namesIn = (value: string): readonly CslName[] => {
  const found = readNames(value);
  if (typeof found === "string") throw new Error(found);
  return found.names;
};

describe("names of BibTeX", () => {
  // The first seven are the examples of O. Patashnik, BibTeXing (1988), section 4, in his three ways to write them.
  it.each<[string, CslName]>([
    ["Per Brinch Hansen", { family: "Hansen", given: "Per Brinch" }],
    ["Brinch Hansen, Per", { family: "Brinch Hansen", given: "Per" }],
    ["Ludwig von Beethoven", { family: "Beethoven", given: "Ludwig", "dropping-particle": "von" }],
    ["von Beethoven, Ludwig", { family: "Beethoven", given: "Ludwig", "dropping-particle": "von" }],
    ["{von Beethoven}, Ludwig", { family: "von Beethoven", given: "Ludwig" }],
    ["Ford, Jr., Henry", { family: "Ford", given: "Henry", suffix: "Jr." }],
    ["{Steele Jr.}, Guy L.", { family: "Steele Jr.", given: "Guy L." }],
    [
      "Charles Louis Xavier Joseph de la Vall{\\'e}e Poussin",
      {
        ...{ family: "Vallée Poussin", given: "Charles Louis Xavier Joseph", "dropping-particle": "de la" },
      },
    ],
    ["{Society of Saws and Files}", { literal: "Society of Saws and Files" }],
    ["{\\'E}mile Zola", { family: "Zola", given: "Émile" }],
    ['{\\"O}stlund', { family: "Östlund" }],
    ["Aristotle", { family: "Aristotle" }],
    ["D.~J. Deal", { family: "Deal", given: "D. J." }],
    ["Anderson Sandor", { family: "Sandor", given: "Anderson" }],
    ["others", { literal: "others" }],
  ])("[P44] %s", (value, name) => {
    expect(namesIn(value)).toEqual([name]);
  });

  it("[P44] are parted by and outside of braces, on several lines too", () => {
    expect(namesIn("Alder, Ann\n  and {Bow and Sons}  AND Cedar, C.")).toEqual([
      { family: "Alder", given: "Ann" },
      { literal: "Bow and Sons" },
      { family: "Cedar", given: "C." },
    ]);
  });

  it.each([
    ["Alder, Ann and", /no name before or behind/],
    ["and Alder", /no name before or behind/],
    ["A, B, C, D", /“A, B, C, D” has more than two commas/],
    [", Ann", /nothing before its comma/],
  ])("[P44] %j is refused with why", (value, why) => {
    expect(readNames(value)).toMatch(why);
  });
});
