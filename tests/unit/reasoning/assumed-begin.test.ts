import { describe, expect, it } from "vitest";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch, findSketch, NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

const north = {
  id: "north",
  relation: "introduced",
  subject: "F",
  region: "north",
  when: "1790/1795",
} as const;
const lag = {
  id: "lag",
  relation: "spread to",
  subject: "F",
  from: "north",
  to: "south",
  years: [5, 10],
} as const;

describe("the fall-back", () => {
  it("[E11] bounds where nothing covers the place, and says that it is assumed", () => {
    const found = findSketch([north], { region: "south" });
    expect(found).toMatchObject({
      ...{ label: "contradictory", hardness: "physical" },
      support: { claims: ["north"], assumptions: ["earliestAnywhere(F)"] },
      derivation: { kind: "assumption", assumption: "earliestAnywhere(F)", from: [{ claim: "north" }] },
      setAside: [],
    });
    expect(found.possible).toEqual({ outer: [[1790, null]], inner: [[1795, null]] });
  });

  it.each(["common until", "discontinued"] as const)(
    "[E11] is given up where the thing was %s an earlier year somewhere",
    (relation) => {
      const gone = { id: "gone", relation, subject: "F", region: "farm", when: "1750" } as const;
      expect(findSketch([north, gone], { region: "south", date: "1720" }).label).not.toBe("contradictory");
      expect(findSketch([north, { ...gone, when: "1850" }], { region: "south", date: "1720" }).label).toBe(
        "contradictory",
      );
    },
  );

  it("[E11][E13] does not bring back a claim that an exception voids", () => {
    const unless = { id: "unless", relation: "void when", of: "north", condition: "mended" } as const;
    const observations = [{ id: "seen", part: "top", feature: "mended" }];
    expect(findSketch([north, unless], { region: "south" }).label).toBe("contradictory");
    expect(findSketch([north, unless], { region: "south", observations }).label).toBe("silent");
  });

  it("[E11] stands in the rule-out as something to give up", () => {
    const { ruleOuts } = examineSketch([north], {
      region: "south",
      observations: [{ id: "o", part: "top", feature: "F" }],
    });
    expect(ruleOuts[0]?.atoms).toContainEqual({ kind: "assumption", assumption: "earliestAnywhere(F)" });
  });

  it("[E21] is listed as one path, not once more as a claim out of scope", () => {
    const { paths } = findSketch([north], { region: "south" });
    expect(paths).toMatchObject([
      { dated: "north", assumptions: ["earliestAnywhere(F)"], label: "contradictory", hardness: "physical" },
    ]);
  });

  it.each([
    ["attested", "1780/1785", [[1780, null]]],
    ["common from", "1780", [[1780, null]]],
    ["current", "1780/1800", [[1780, null]]],
    ["introduced", "1780", [[1780, null]]],
  ] as const)("[E11] is lowered by what was %s anywhere", (relation, when, outer) => {
    const other = {
      id: "other",
      relation,
      subject: "F",
      region: "farm",
      when,
      hardness: "practice",
    } as const;
    expect(findSketch([north, other], { region: "south" }).possible.outer).toEqual(outer);
  });

  it("[E11] needs a physical introduction somewhere", () => {
    expect(findSketch([{ ...north, hardness: "practice" }], { region: "south" }).label).toBe("silent");
    expect(findSketch([{ ...north, relation: "attested" }], { region: "south" }).label).toBe("silent");
  });

  it("[E11] gives way to anything physical that covers the place, be it void here", () => {
    const south = { ...north, id: "south", region: "south", when: "1700" } as const;
    expect(findSketch([north, south], { region: "south" }).possible.outer).toEqual([[1700, null]]);
    const active = { ...south, relation: "active", when: "1700/1780" } as const;
    expect(findSketch([north, active], { region: "south" }).support.assumptions).toEqual([]);
    const exception = { id: "void", relation: "void when", of: "south", condition: "G" } as const;
    const observations = [{ id: "g", part: "top", feature: "G" }];
    expect(findSketch([north, south, exception], { region: "south", observations })).toMatchObject({
      ...{ label: "silent", reason: "defeated" },
    });
  });

  it("[E11] is not needed where a wider claim covers the place", () => {
    const world = { ...north, id: "world", region: "world", when: "1700" } as const;
    expect(findSketch([north, world], { region: "south" }).support).toEqual({
      claims: ["world"],
      assumptions: [],
    });
  });

  it("[E11] names what the graph does not know", () => {
    const { gaps } = examineSketch([north], {
      region: "south",
      observations: [{ id: "o", part: "top", feature: "F" }],
    });
    expect(gaps).toContainEqual({ kind: "no-claim-here", term: "F", finding: "o" });
  });
});

describe("the time a thing took to spread", () => {
  it("[E10] is added to its date where it came from, the shortest loosely and the longest strictly", () => {
    const found = findSketch([north, lag], { region: "south" });
    expect(found.possible).toEqual({ outer: [[1795, null]], inner: [[1805, null]] });
    expect(found.support).toEqual({ claims: ["lag", "north"], assumptions: [] });
    expect(found.derivation).toMatchObject({ by: "diffusion", from: [{ claim: "north" }, { claim: "lag" }] });
    expect(found.paths).toMatchObject([{ via: ["lag"], dated: "north", label: "contradictory" }]);
  });

  it("[E10] counts only where nothing introduced covers the place", () => {
    const south = { ...north, id: "south", region: "south", when: "1760" } as const;
    expect(findSketch([north, lag, south], { region: "south" }).possible.outer).toEqual([[1760, null]]);
  });

  const chain = aTree("region", { world: { a: {}, b: {}, c: {}, d: {} } });
  const first = { id: "first", relation: "introduced", subject: "F", region: "a", when: "1700" } as const;
  const spread = (from: string, to: string, years: [number, number]) =>
    ({ id: `${from}-${to}`, relation: "spread to", subject: "F", from, to, years }) as const;

  it("[E10] goes by the earliest of several chains, and rests on that one", () => {
    const claims = [
      first,
      spread("a", "b", [10, 20]),
      spread("b", "d", [10, 20]),
      spread("a", "c", [50, 60]),
      spread("c", "d", [50, 60]),
    ];
    const found = findSketch(claims, { region: "d", date: "1710" }, chain);
    expect(found.possible).toEqual({ outer: [[1720, null]], inner: [[1740, null]] });
    expect(found.support.claims).toEqual(["a-b", "b-d", "first"]);
  });

  it("[E10] passes no region twice, and ends", () => {
    const claims = [first, spread("a", "b", [10, 10]), spread("b", "c", [10, 10]), spread("c", "b", [1, 1])];
    expect(findSketch(claims, { region: "c" }, chain).possible.outer).toEqual([[1720, null]]);
    const circle = [spread("b", "c", [10, 10]), spread("c", "b", [1, 1]), first];
    expect(findSketch(circle, { region: "c" }, chain).support.assumptions).toEqual(["earliestAnywhere(F)"]);
  });

  it("[E10] ends where it spread from a region to what surrounds it", () => {
    const outwards = { ...lag, from: "town", to: "north" } as const;
    expect(findSketch([outwards], { region: "town" }).label).toBe("silent");
    const town = { ...north, id: "town-itself", region: "town" } as const;
    expect(findSketch([outwards, town], { region: "farm" }).possible.outer).toEqual([[1795, null]]);
  });

  it("[E10] reaches what lies within the region it came to", () => {
    const toNorth = { ...lag, from: "south", to: "north" } as const;
    const south = { ...north, region: "south" } as const;
    expect(findSketch([south, toNorth], { region: "town" }, NORTH_AND_SOUTH).possible.outer).toEqual([
      [1795, null],
    ]);
  });
});

describe("regional claims", () => {
  const confined = { id: "c", relation: "confined to", subject: "F", regions: ["town", "south"] } as const;

  it("[E12] confined to: no year in a place outside, all inside", () => {
    expect(findSketch([confined], { region: "farm" })).toMatchObject({
      ...{ label: "contradictory", hardness: "practice", direction: "nowhere" },
      usual: { outer: [], inner: [] },
    });
    expect(findSketch([confined], { region: "town" }).label).toBe("silent");
    expect(findSketch([{ ...confined, hardness: "physical" }], { region: "farm" }).hardness).toBe("physical");
  });

  it("[E12] confined to: a wider place is open as long as one of its places is inside", () => {
    expect(findSketch([confined], { region: "north" }).label).toBe("silent");
    expect(findSketch([confined], {}).label).toBe("silent");
  });

  it("[E12] confined to: puts the claimed region in question, not a date or whether the part is original", () => {
    const { ruleOuts } = examineSketch([confined], {
      region: "farm",
      observations: [{ id: "o", part: "top", feature: "F" }],
    });
    expect(ruleOuts).toMatchObject([
      {
        against: "attribution",
        hardness: "practice",
        atoms: [{ kind: "attr", of: "region" }, { kind: "observation" }, { kind: "claim" }],
      },
    ]);
  });

  it("[E12] not found in: empty within the scope without a date, silent outside it", () => {
    const absent = { id: "c", relation: "not found in", subject: "F", region: "north" } as const;
    expect(findSketch([absent], { region: "town" })).toMatchObject({
      label: "contradictory",
      direction: "nowhere",
    });
    expect(findSketch([absent], { region: "south" })).toMatchObject({
      label: "silent",
      reason: "out-of-scope",
    });
    expect(findSketch([absent], { region: "world" }).label).toBe("silent");
  });

  it("[E12] not found in: with a date takes out fewer years loosely and more strictly", () => {
    const absent = { id: "c", relation: "not found in", subject: "F", when: "1750~/1780~" } as const;
    expect(findSketch([absent]).usual).toEqual({
      outer: [
        [null, 1754],
        [1776, null],
      ],
      inner: [
        [null, 1744],
        [1786, null],
      ],
    });
    expect(findSketch([absent])).toMatchObject({
      label: "contradictory",
      hardness: "practice",
      direction: "gap",
    });
  });
});
