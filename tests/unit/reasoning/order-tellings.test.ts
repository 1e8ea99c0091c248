import { describe, expect, it } from "vitest";
import { id, type TermId } from "#server/domain/ids.ts";
import { chooseTellings, compareTellings } from "#server/reasoning/sheet/order-tellings.ts";
import type { Telling } from "#server/reasoning/sheet/telling.ts";

const aTelling = (feature: string, rest: Partial<Telling> = {}): Telling => ({
  ...{ part: id("part.top"), feature: id(feature), position: "front", tells: "bound" },
  ...{ possible: [[null, null]], usual: [[null, null]], isAssumed: false, claims: [], strength: "usual" },
  isOfPlace: false,
  ...{ isOfForm: false, isOfChange: false, isAgainstDate: false, evenness: 100, sight: "now", kinds: 3 },
  ...rest,
});
const names = (tellings: readonly Telling[]) => tellings.map(({ feature }) => feature);
const NO_TREE: ReadonlyMap<TermId, TermId> = new Map();

describe("[F4] the most telling", () => {
  it.each<[string, Partial<Telling>, Partial<Telling>]>([
    [
      "bounds before signs",
      { tells: "bound", strength: "tentative" },
      { tells: "sign", strength: "certain" },
    ],
    ["signs before habits", { tells: "sign", evenness: 0 }, { tells: "habit" }],
    ["habits before what is typical", { tells: "habit" }, { tells: "typical", isOfForm: true }],
    ["what is typical before records", { tells: "typical" }, { tells: "record", isOfForm: true }],
    ["what is typical of the very place", { isOfPlace: true, kinds: 9 }, { isAgainstDate: true }],
    ["habits before records", { tells: "habit" }, { tells: "record", isOfForm: true }],
    ["what is seen at once before what is unfastened", { sight: "now" }, { sight: "later", isOfForm: true }],
    ["what is said of the form", { isOfForm: true }, { isAgainstDate: true }],
    ["what contradicts the date", { isAgainstDate: true, evenness: 1 }, { evenness: 170 }],
    ["signs of change before signs of age", { isOfChange: true, kinds: 9 }, { kinds: 1 }],
    [
      "what is more than tentative",
      { strength: "usual", evenness: 50 },
      { strength: "tentative", evenness: 90 },
    ],
    [
      "what divides the years most evenly",
      { evenness: 120, strength: "usual" },
      { evenness: 119, strength: "certain" },
    ],
    ["the stronger", { strength: "firm", kinds: 9 }, { strength: "usual", kinds: 1 }],
    ["what is looked for on fewer kinds of part", { kinds: 1 }, { kinds: 2 }],
  ])("puts first: %s", (_, first, second) => {
    const [a, b] = [aTelling("z", first), aTelling("a", second)];
    expect(compareTellings(a, b)).toBeLessThan(0);
    expect(compareTellings(b, a)).toBeGreaterThan(0);
  });

  it("goes by the id where nothing else tells two apart", () => {
    expect(names([aTelling("b"), aTelling("a")].sort(compareTellings))).toEqual(["a", "b"]);
  });
});

describe("[F5] what is told of one part", () => {
  it("is a bound, a sign and a habit in turn, in the order of what they tell", () => {
    const many = ["bound", "sign", "habit", "record"].flatMap((tells) =>
      [1, 2, 3, 4].map((n) => aTelling(`${tells}-${n}`, { tells: tells as Telling["tells"], kinds: n })),
    );
    expect(names(chooseTellings(many, 3, NO_TREE))).toEqual(["bound-1", "sign-1", "habit-1"]);
    expect(names(chooseTellings(many, 5, NO_TREE))).toEqual([
      ...["bound-1", "bound-2", "sign-1", "sign-2", "habit-1"],
    ]);
    expect(chooseTellings(many, 8, NO_TREE)).toHaveLength(8);
  });

  it("is filled up with what tells much, and not with what tells little or is only on record", () => {
    const few = [
      aTelling("even", { evenness: 90 }),
      aTelling("next", { evenness: 60 }),
      aTelling("hardly", { evenness: 4 }),
      aTelling("once", { tells: "record" }),
    ];
    expect(names(chooseTellings(few, 6, NO_TREE))).toEqual(["even", "next"]);
    expect(names(chooseTellings([aTelling("once", { tells: "record" })], 6, NO_TREE))).toEqual(["once"]);
  });

  it("has beyond that what is typical of the very place, four at most", () => {
    const crowd = ["a", "b", "c"].map((name) => aTelling(name));
    const place = ["p", "q", "r", "s", "t"].map((name) =>
      aTelling(name, { tells: "typical", isOfPlace: true, evenness: 0 }),
    );
    const around = aTelling("around", { tells: "typical", strength: "firm", evenness: 0 });
    expect(names(chooseTellings([around, ...crowd, ...place], 3, NO_TREE))).toEqual([
      ...["a", "b", "p", "q", "r", "s", "t"],
    ]);
    expect(names(chooseTellings([around, ...crowd], 2, NO_TREE))).toEqual(["a", "around"]);
  });

  it("has of a feature and a narrower one only the more telling", () => {
    const broader = new Map([[id<"term">("narrow"), id<"term">("wide")]]);
    const both = [
      aTelling("wide", { kinds: 4 }),
      aTelling("narrow", { kinds: 1 }),
      aTelling("other", { kinds: 9 }),
    ];
    expect(names(chooseTellings(both, 6, broader))).toEqual(["narrow", "other"]);
  });

  it("is the same whatever the order it is found in", () => {
    const some = [aTelling("a"), aTelling("b", { tells: "sign" }), aTelling("c", { kinds: 1 })];
    expect(chooseTellings(some.toReversed(), 2, NO_TREE)).toEqual(chooseTellings(some, 2, NO_TREE));
  });
});
