import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { storiesOf } from "#server/reasoning/rival-stories/stories.ts";
import { weightWord } from "#server/reasoning/weights/weight-word.ts";
import { METHOD } from "#web/method/weighing/method-text.ts";
import { numbersTable, pricesTable, signsTable, statesTable } from "#web/method/weighing/tables.ts";
import { printedMethod } from "./print-method.ts";

const method = readFileSync(new URL("../../../docs/method.md", import.meta.url), "utf8");
const sectionOf = (id: string): string => {
  const found = METHOD.find((section) => section.id === id);
  if (found === undefined) throw new Error(`no section ${id}`);
  return JSON.stringify(found.blocks);
};

describe("docs/method.md", () => {
  it("[N17] is what the page says, with the tables as the engine has them", () => {
    expect(method, "run npm run method").toBe(printedMethod());
  });

  it("[N17] has every number that is assumed: single ones with words, the others in their tables", () => {
    const single = Object.values(ASSUMED_ODDS).filter((value) => typeof value === "number");
    expect(numbersTable.rows.length).toBe(single.length - 2);
    expect(numbersTable.rows.filter(([, , means]) => means === "")).toEqual([]);
    const numbersIn = (value: unknown): readonly number[] =>
      typeof value === "number"
        ? [value]
        : typeof value === "object" && value !== null
          ? Object.values(value).flatMap(numbersIn)
          : [];
    for (const value of numbersIn(ASSUMED_ODDS)) expect(method).toContain(String(value));
  });

  it("[N17] has a row of priors for every kind of part with odds, and one for the others", () => {
    expect(statesTable.rows).toHaveLength(ASSUMED_ODDS.states.length + 1);
    for (const [kind, ...odds] of statesTable.rows)
      expect(
        odds.reduce((sum, p) => sum + Number(p), 0),
        kind,
      ).toBeCloseTo(1, 10);
  });

  it("[N17] prices as mends are priced: by hand, a handle 210 and 1301, a sure look 1690", () => {
    const prices = pricesTable.rows.map(([, price]) => Number(price));
    expect(prices.slice(0, 2)).toEqual([210, 1301]);
    expect(prices).toContain(1690);
  });

  it("[N17] says of each sign how many times as probable it makes what was seen", () => {
    expect(signsTable.rows.map(([strength, , , ratio, words]) => [strength, ratio, words])).toEqual([
      ["certain", "100", "moderate support"],
      ["firm", "30", "moderate support"],
      ["usual", "10", "weak support"],
      ["tentative", "3", "weak support"],
    ]);
  });

  it("[N17] states the words for weights where they change", () => {
    const words = [0.49, 0.5, 0.99, 1, 1.99, 2, Number.POSITIVE_INFINITY].map(weightWord);
    expect(words).toEqual([
      ...["slight", "moderate", "moderate", "strong", "strong", "very strong", "beyond the model"],
    ]);
    const said = sectionOf("words-for-weights");
    for (const line of ["under 0.5: slight", "0.5 to 1: moderate", "1 to 2: strong", "above 2: very strong"])
      expect(said).toContain(line);
  });

  it("[N17] tells of each story what it assumes, by the numbers it is weighed with", () => {
    const said = sectionOf("rivals");
    const stories = storiesOf([1760, 1780], 2026, [], { ...ASSUMED_ODDS, madeToDeceive: 0.1 });
    const of = (kind: string) => {
      const found = stories.find((story) => story.kind === kind);
      if (found === undefined) throw new Error(`no story ${kind}`);
      return found;
    };
    expect(said).toContain(`every part original with ${of("as-claimed").odds.otherwise.original}`);
    expect(said).toContain(`up to ${of("provincial").years[1] - 1780} years after the claimed ones`);
    expect(said).toContain(`habits survive at ${of("provincial").odds.lateSurvival}`);
    expect(said).toContain(`from ${of("revival").years[0] - 1780} years after the claimed ones`);
    expect(said).toContain(`copied with ${of("revival").odds.copied}, while`);
    const { reused, original } = of("made-up").odds.otherwise;
    expect(said).toContain(`reused with ${reused}, original with ${original}`);
    expect(said).toContain(`in the last ${2026 - of("assembled").years[0]} years`);
    expect(said).toContain(
      `reused with ${of("assembled").odds.otherwise.reused}, by ${of("assembled").odds.reuseYears} years`,
    );
    const { copied, leak } = of("to-look-old").odds;
    expect(said).toContain(`habits copied with ${copied}, and the leak at ${leak}`);
  });

  it("[N17] answers ten objections, and says what cannot be known", () => {
    const objections = METHOD.find(({ id }) => id === "objections")?.blocks[0];
    if (objections === undefined || typeof objections === "string" || !("list" in objections))
      throw new Error("the objections are no list");
    expect(objections.list).toHaveLength(10);
    for (const answer of objections.list) expect(answer.split("”")[1]?.length).toBeGreaterThan(80);
    expect(sectionOf("cannot-know")).toContain("of the same date and place");
  });
});
