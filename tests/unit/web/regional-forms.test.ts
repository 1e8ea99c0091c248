import { describe, expect, it } from "vitest";
import { blindSpotsOf } from "#web/regional-forms/BlindSpots.tsx";
import { splitByDate } from "#web/regional-forms/group-found.ts";
import { isToldLag, sayLag } from "#web/regional-forms/say-lag.ts";
import { sayBriefly } from "#web/regional-forms/say-placed.ts";
import { splitShared } from "#web/regional-forms/split-shared.ts";

describe("a lag in words", () => {
  it.each([
    [[18, 38], "18–38 years later"],
    [[1, 1], "1 year later"],
    [[-16, -12], "12–16 years earlier"],
    [[0, 0], "in the same year"],
    [[-10, 10], "no lag the dates can tell"],
    [[0, 8], "no lag the dates can tell"],
    [[5, null], "at least 5 years later"],
    [[null, -5], "at least 5 years earlier"],
    [[null, 5], "no lag the dates can tell"],
    [[-3, null], "no lag the dates can tell"],
    [[null, null], "no lag the dates can tell"],
  ] as const)("[R6] %j is %s", (lag, words) => {
    expect(sayLag(lag)).toBe(words);
    expect(isToldLag(lag)).toBe(/later|earlier/.test(words));
  });
});

describe("[R2] a claim in few words", () => {
  const confined = (...labels: readonly string[]) =>
    sayBriefly({
      relation: "CONFINED_TO",
      years: null,
      objects: labels.map((label) => ({ __typename: "Term" as const, id: label, label })),
    });
  it("says that a thing was made nowhere else where it is confined to one region alone", () => {
    expect(confined("Boston")).toBe("made nowhere else");
    expect(confined("Rhode Island", "Connecticut", "New York")).toBe(
      "made only in Rhode Island, Connecticut or New York",
    );
  });
});

describe("what two or three regions have", () => {
  const found = (...ids: readonly string[]) => ({
    region: null,
    found: ids.map((id) => ({ subject: { id }, claims: [{ id: `claim.${id}` }] })),
  });
  it("[R9] is shared where two have it, that of most regions first, and alone where one has it", () => {
    const { shared, alone } = splitShared([found("a", "b", "c"), found("b", "c", "d"), found("c")]);
    expect(shared.map(({ id, at }) => [id, at.map((each) => each?.subject.id)])).toEqual([
      ["c", ["c", "c", "c"]],
      ["b", ["b", "b", undefined]],
    ]);
    expect(alone.map((each) => each.map(({ subject }) => subject.id))).toEqual([["a"], ["d"], []]);
  });

  it("[R9] is not shared where it is one claim of a region within the other", () => {
    const region = (id: string, ...above: readonly string[]) => ({
      region: { id, broaderTerms: above.map((each) => ({ id: each })) },
    });
    const state = { ...region("state"), found: [{ subject: { id: "a" }, claims: [{ id: "town-only" }] }] };
    const town = { ...region("town", "state"), found: state.found };
    const both = { subject: { id: "b" }, claims: [{ id: "of-state" }, { id: "of-town" }] };
    const { shared, alone } = splitShared([
      { ...state, found: [...state.found, both] },
      { ...town, found: [...town.found, { ...both, claims: [{ id: "of-town" }] }] },
    ]);
    expect(shared.map(({ at }) => at.map((each) => each?.claims))).toEqual([
      [[{ id: "of-state" }], [{ id: "of-town" }]],
    ]);
    expect(alone.map((each) => each.map(({ subject }) => subject.id))).toEqual([[], ["a"]]);
  });
});

describe("things of a region", () => {
  const years = (first: number) => ({
    ...{ begin: [first, first], end: [first, first] },
    ...{ padBegin: 0, padEnd: 0, doubtful: false },
  });
  const thing = (label: string, first?: number) => ({
    subject: { label },
    claims: [
      first === undefined
        ? { relation: "TYPICAL_OF" as const, years: null }
        : { relation: "ATTESTED" as const, years: years(first) },
    ],
  });
  it("[R9] stand in the order of their first years, then without a date by name", () => {
    const { dated, undated } = splitByDate([
      thing("z"),
      thing("late", 1800),
      thing("a"),
      thing("early", 1700),
    ]);
    expect(dated.map(({ subject }) => subject.label)).toEqual(["early", "late"]);
    expect(undated.map(({ subject }) => subject.label)).toEqual(["a", "z"]);
  });
});

describe("the blind spots of a region", () => {
  const found = (group: "PRACTICE" | "FORM", kind: "FEATURE" | "TOOL" | "FORM") => ({
    group,
    subject: { id: kind, label: kind, kind },
    claims: [{ years: {} }],
  });
  const spotsOf = (missingKinds: readonly string[], ...things: readonly ReturnType<typeof found>[]) =>
    blindSpotsOf({
      ...{ missingKinds, within: 4, wider: { id: "state", label: "The State" } },
      ...{ sources: [{}, {}], found: things },
    } as unknown as Parameters<typeof blindSpotsOf>[0]);

  it("[R7] do not deny what stands under a heading shared with other kinds", () => {
    expect(spotsOf(["PRACTICE", "TOOL", "FORM"], found("PRACTICE", "FEATURE"))).toEqual([
      "No claim on forms, which The State has.",
      "Under “Practices and features” there are features alone: no claim is on practices or tools, which The State has.",
    ]);
    expect(spotsOf(["PRACTICE"], found("PRACTICE", "TOOL"), found("PRACTICE", "FEATURE"))).toEqual([
      "Under “Practices and features” there are features and tools alone: no claim is on practices, which The State has.",
    ]);
  });

  it("[R7] name the kinds plainly where nothing stands under the heading", () => {
    expect(spotsOf(["PRACTICE", "MAKER"], found("FORM", "FORM"))).toEqual([
      "No claim on practices or makers, which The State has.",
    ]);
    expect(spotsOf([], found("PRACTICE", "FEATURE"))).toEqual([]);
  });
});
