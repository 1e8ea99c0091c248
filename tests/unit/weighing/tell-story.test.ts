import { describe, expect, it } from "vitest";
import { type ClaimId, id } from "#server/domain/ids.ts";
import type { GivenUp, MendOption, Mends } from "#server/domain/weighing/mends.ts";
import type { MendsInWords } from "#server/domain/weighing/weighing-words.ts";
import type { StripGroup, StripMark } from "#web/strips/strip-row.ts";
import { tellStory } from "#web/weighing/tell-story.ts";
import { touchedRows } from "#web/weighing/touched-rows.ts";

const feet = id<"part">("feet");
const back = id<"part">("back");
const later = (part: typeof feet): GivenUp => ({ kind: "later", parts: [part] });
const saw: GivenUp = { kind: "claim", claim: id<"claim">("claim.saw") };
const misread: GivenUp = { kind: "misread", observation: id<"observation">("o1") };
const altered: GivenUp = { kind: "altered", observation: id<"observation">("o2") };

const PHRASES = new Map<GivenUp, string>([
  [saw, "a claim is wrong (saws: introduced 1790)"],
  [misread, "saw marks on the feet were misread"],
  [altered, "saw marks on the back are later work on an old part"],
]);
const option = (price: number, ...givenUp: readonly GivenUp[]): MendOption => ({
  ...{ givenUp, price },
  shared: givenUp.flatMap((given): ClaimId[] => (given.kind === "claim" ? [given.claim] : [])),
});

const mends: Mends = {
  level: "physical",
  best: { givenUp: [saw], price: 900, year: 1760, place: { region: null, elsewhere: false } },
  proved: true,
  lowerBound: 900,
  perPart: [
    { parts: [feet], options: [option(700, later(feet)), option(900, saw), option(1600, misread)] },
    { parts: [back], options: [option(800, later(back)), option(900, saw), option(950, altered)] },
  ],
  listed: [],
  more: false,
};

const said = (given: GivenUp): string =>
  PHRASES.get(given) ?? (given.kind === "later" ? `the ${given.parts[0]} was made later` : "");
const words: MendsInWords = {
  level: "physical",
  says: "For 1760 to be possible, at the least: a claim is wrong.",
  opening: "For 1760 to be possible",
  proved: "There is none.",
  perPart: mends.perPart.map(({ parts, options }) => ({
    parts,
    name: `the ${parts[0]}`,
    says: `The ${parts[0]}, one of:`,
    options: options.map(({ givenUp, price }) => ({
      says: givenUp.map(said).join(" and "),
      given: givenUp.map(said),
      price: price < 900 ? "easily given up" : price < 1500 ? "at some cost" : "at great cost",
      claims: [],
    })),
  })),
};
const keyAt = (row: number, n: number): Record<string, string> => {
  const story = tellStory(mends, words, {});
  return { [story.rows[row]?.key ?? ""]: story.rows[row]?.options[n]?.key ?? "" };
};

describe("the story that is chosen", () => {
  it("[Y4] begins as the cheapest story, and says a claim that saves two parts once", () => {
    const story = tellStory(mends, words, {});
    expect(story.says).toBe("For 1760 to be possible: a claim is wrong (saws: introduced 1790).");
    expect(story.isLeast).toBe(true);
    expect(story.price).toBe("At some cost: the feet and the back.");
    expect(story.rows[0]?.options[1]?.alsoSaves).toEqual(["the back"]);
    expect(story.rows[0]?.options[0]?.alsoSaves).toEqual([]);
  });

  it("[Y4] is retold by a choice, with what it gives up, and says that another asks less", () => {
    const story = tellStory(mends, words, { ...keyAt(0, 2), ...keyAt(1, 0) });
    expect(story.says).toBe(
      "For 1760 to be possible: saw marks on the feet were misread and the back was made later.",
    );
    expect(story.price).toBe("At great cost: the feet. Easily given up: the back.");
    expect(story.isLeast).toBe(false);
  });

  it("[Y4] leaves a choice that an answer no longer has, for the cheapest", () => {
    expect(tellStory(mends, words, { "physical feet": "gone" }).isLeast).toBe(true);
  });

  it("[Y4] is what the words say where nothing has to be given up", () => {
    const none = { ...mends, perPart: [] };
    const story = tellStory(none, { ...words, perPart: [], says: "Nothing has to be given up." }, {});
    expect(story).toMatchObject({ says: "Nothing has to be given up.", price: "", rows: [] });
    expect(story.touched.parts.size).toBe(0);
  });

  it("[Y5] touches the parts it makes later, and doubts or works over the things it sets aside", () => {
    const { touched } = tellStory(mends, words, { ...keyAt(0, 2), ...keyAt(1, 2) });
    expect([...touched.parts]).toEqual([
      ["feet", "doubted"],
      ["back", "reworked"],
    ]);
    expect([...touched.observations]).toEqual([
      ["o1", "doubted"],
      ["o2", "reworked"],
    ]);
    expect([...tellStory(mends, words, keyAt(0, 0)).touched.parts]).toEqual([
      ["feet", "later"],
      ["back", "doubted"],
    ]);
  });
});

describe("[Y5] the strips that the story touches", () => {
  const group = (part: typeof feet, rows: readonly (readonly [string, StripMark])[]): StripGroup => ({
    ...{ id: part, part, label: part },
    rows: rows.map(([name, mark]) => ({
      ...{ id: name, observation: id<"observation">(name), part, label: name, mark, isSilent: false },
      ...{ possible: [], usual: [], short: "", says: "", steps: [], paths: [], pathCount: 0 },
      ...{ ways: [], signs: [], setAside: [], voidIf: [] },
    })),
  });
  const groups = [
    group(feet, [
      ["o1", "against-hard"],
      ["o3", "for"],
    ]),
    group(back, [["o2", "against-soft"]]),
  ];

  it("are all of a part made later, the thing misread, and what speaks against a part where a claim is given up", () => {
    expect([...touchedRows(groups, tellStory(mends, words, keyAt(0, 0)).touched)]).toEqual([
      ["o1", "the part was made later"],
      ["o3", "the part was made later"],
      ["o2", "what is known of it is wrong"],
    ]);
    expect([
      ...touchedRows(groups, tellStory(mends, words, { ...keyAt(0, 2), ...keyAt(1, 2) }).touched),
    ]).toEqual([
      ["o1", "it was misread"],
      ["o2", "later work on an old part"],
    ]);
  });
});
