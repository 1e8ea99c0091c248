import { describe, expect, it } from "vitest";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch, findSketch } from "#tests/support/examine-sketch.ts";

const inTown = { id: "town", relation: "introduced", subject: "F", region: "town", when: "1790" } as const;
const inNorth = { id: "north", relation: "introduced", subject: "F", region: "north", when: "1770" } as const;
const inWorld = { id: "world", relation: "introduced", subject: "F", region: "world", when: "1700" } as const;
const sight = { observations: [{ id: "o", part: "top", feature: "F" }] };

describe("places", () => {
  const placesOf = (claims: Parameters<typeof examineSketch>[0], region?: string) =>
    examineSketch(claims, { ...sight, ...(region === undefined ? {} : { region }) }).attribution.places.map(
      (place) => `${place.elsewhere ? "elsewhere in " : ""}${place.region}`,
    );

  it("[E14] are the regions that claims name at or below the claimed one, and what is left of it", () => {
    expect(placesOf([inTown, inNorth], "north")).toEqual(["elsewhere in north", "town"]);
    expect(placesOf([inTown, inNorth], "town")).toEqual(["town"]);
    expect(placesOf([inTown, inNorth], "south")).toEqual(["south"]);
  });

  it("[E14] are all of them if no region is claimed", () => {
    expect(placesOf([inTown, inNorth])).toEqual(["elsewhere in world", "elsewhere in north", "town"]);
  });

  it("[E14] that no claim tells apart are one", () => {
    expect(placesOf([inTown], "world")).toEqual(["elsewhere in world", "town"]);
    expect(placesOf([inWorld])).toEqual(["world"]);
    expect(placesOf([])).toEqual(["null"]);
  });

  it("[E14] are not told apart by what bounds nothing", () => {
    expect(placesOf([{ ...inTown, relation: "attested" }], "north")).toEqual(["north"]);
  });

  it("[E14] leave room for what no tree holds if there are several trees", () => {
    const terms = [...aTree("region", { north: {} }), ...aTree("region", { south: {} })];
    const { attribution } = examineSketch([inNorth, { ...inNorth, id: "s", region: "south" }], sight, terms);
    expect(attribution.places).toEqual([
      { region: null, elsewhere: true },
      { region: "north", elsewhere: false },
      { region: "south", elsewhere: false },
    ]);
  });
});

describe("a place left open", () => {
  it("[E14] gives the union of the outer and the intersection of the inner sets", () => {
    const found = findSketch([inTown, inNorth], { region: "north" });
    expect(found.possible).toEqual({ outer: [[1770, null]], inner: [[1790, null]] });
  });

  it("[E14] is decided for the whole set of a feature, not term by term", () => {
    const claims = [
      { id: "needs", relation: "requires", subject: "F", ways: [["A", "B"]] },
      { id: "a", relation: "active", subject: "A", region: "town", when: "1700/1740" },
      { id: "a2", relation: "active", subject: "A", region: "farm", when: "1780/1800" },
      { id: "b", relation: "active", subject: "B", region: "town", when: "1780/1800" },
      { id: "b2", relation: "active", subject: "B", region: "farm", when: "1700/1740" },
      { id: "none", relation: "confined to", subject: "F", regions: ["town", "farm"], hardness: "physical" },
    ] as const;
    // Term by term A and B would be of 1700-1740 or 1780-1800 and could meet; in no one place do they.
    expect(findSketch(claims, { region: "north" })).toMatchObject({
      label: "contradictory",
      direction: "nowhere",
      possible: { outer: [] },
    });
  });

  it("[E27] rules out only place by place, each by its own claims", () => {
    const { ruleOuts, complete } = examineSketch([inTown, { ...inNorth, when: "1780" }], {
      ...sight,
      region: "north",
    });
    expect(ruleOuts.map(({ places, atoms }) => [places.map(({ region }) => region), atoms.length])).toEqual([
      [["town"], 5],
      [["north"], 5],
    ]);
    expect(ruleOuts.map(({ gapYears }) => gapYears)).toEqual([15, 5]);
    expect(complete).toBe(true);
  });

  it("[E14] names one rule-out for all places where the same claims hold", () => {
    const claims = [inTown, { id: "all", relation: "introduced", subject: "G", when: "1790" }] as const;
    const { ruleOuts } = examineSketch(claims, {
      region: "north",
      observations: [
        { id: "f", part: "top", feature: "F", seen: "unseen" },
        { id: "g", part: "top", feature: "G" },
      ],
    });
    expect(ruleOuts).toHaveLength(1);
    expect(ruleOuts[0]?.places).toHaveLength(2);
  });

  it("[E14] does not contradict while one place is open, and derives by places where it does", () => {
    expect(findSketch([inTown, inWorld], { region: "north" }).label).toBe("consistent");
    const found = findSketch([inTown, { ...inNorth, when: "1780" }], { region: "north" });
    expect(found.support.claims).toEqual(["north", "town"]);
    expect(found.derivation).toMatchObject({
      by: "places",
      place: null,
      years: [[1780, null]],
      from: [
        { kind: "claim", claim: "north" },
        { kind: "claim", claim: "town" },
      ],
    });
  });
});

describe("a part from elsewhere", () => {
  it("[E15] is judged in its own region", () => {
    const parts = [{ id: "brasses", region: "south" }, "top"];
    const report = examineSketch([inNorth, { ...inNorth, id: "south", region: "south", when: "1790" }], {
      ...{ region: "north", parts, date: "1775/1780" },
      observations: [
        { id: "there", part: "brasses", feature: "F" },
        { id: "here", part: "top", feature: "F" },
      ],
    });
    const [there, here] = ["there", "here"].map((id) => report.findings.find((found) => found.id === id));
    expect(there?.possible.outer).toEqual([[1790, null]]);
    expect(here?.possible.outer).toEqual([[1770, null]]);
    // The claimed region of the piece is not in question for a part that is known to be from elsewhere.
    expect(report.ruleOuts.map(({ atoms }) => atoms.map(({ kind }) => kind))).toEqual([
      ["attr", "original", "observation", "claim"],
    ]);
  });
});
