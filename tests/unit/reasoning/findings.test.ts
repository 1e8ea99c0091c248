import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { aTerm, aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch, findSketch, NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

const introduced = (when: string, subject = "F") =>
  ({ id: `${subject}-in`, relation: "introduced", subject, when }) as const;
const gone = (when: string, subject = "F") =>
  ({ id: `${subject}-out`, relation: "discontinued", subject, when }) as const;
const needs = (ways: readonly (readonly string[])[], subject = "F") =>
  ({ id: `${subject}-needs`, relation: "requires", subject, ways }) as const;

describe("a finding", () => {
  it("[E16] is certain if the strict years hold the claimed ones, marginal if they miss them", () => {
    const date = { date: "1770/1775" };
    const found = (when: string) => findSketch([introduced(when)], date);
    expect(found("1770")).toMatchObject({ label: "consistent", certain: true, marginal: false });
    expect(found("1765/1773")).toMatchObject({ certain: false, marginal: false });
    expect(found("1765/1780")).toMatchObject({ certain: false, marginal: true });
  });

  it("[E2] takes the claimed date loosely, with its pads", () => {
    expect(findSketch([introduced("1779")], { date: "1765~/1775~" }).label).toBe("consistent");
    const { attribution } = examineSketch([], { date: "1765~/1775~" });
    expect(attribution.years).toEqual([1760, 1780]);
    expect(examineSketch([], { date: "../1750" }).attribution.years).toEqual([null, 1750]);
  });

  it.each([
    [[introduced("1790")], "late", 15],
    [[gone("1750")], "early", 10],
    [[needs([["A"], ["B"]]), gone("1750", "A"), introduced("1790", "B")], "gap", 10],
    [[introduced("1770"), gone("1765")], "nowhere", undefined],
  ] as const)("[E16] says on which side its years lie and how far: %#", (claims, direction, gapYears) => {
    const found = findSketch(claims);
    expect([found.label, found.direction, found.gapYears]).toEqual(["contradictory", direction, gapYears]);
  });

  it("[E18] measures in the years of its hardness", () => {
    const claims = [
      introduced("1700"),
      { ...introduced("1785"), id: "habit", relation: "common from" },
    ] as const;
    expect(findSketch(claims)).toMatchObject({ hardness: "practice", gapYears: 10 });
    expect(findSketch([...claims, { ...introduced("1779"), id: "hard" }]).openOnlyBy).toEqual([]);
    expect(findSketch([{ ...introduced("1779"), id: "hard" }, claims[1]])).toMatchObject({
      ...{ hardness: "physical", gapYears: 4 },
    });
  });

  it("[E16] is doubtful if a claim it rests on is", () => {
    expect(findSketch([introduced("1790?")]).doubtful).toBe(true);
    expect(findSketch([introduced("1790"), gone("1850?")])).not.toHaveProperty("doubtful");
  });

  it("[E17] does not date what was looked for in vain or could not be seen", () => {
    const { findings } = examineSketch([introduced("1790")], {
      observations: [
        { id: "a", part: "top", feature: "F", seen: "absent" },
        { id: "u", part: "top", feature: "F", seen: "unseen" },
      ],
    });
    expect(findings).toMatchObject([
      {
        id: "a",
        label: "silent",
        reason: "looked-for-absent",
        possible: { outer: [[null, null]] },
        paths: [],
      },
      { id: "u", label: "silent", reason: "could-not-be-seen" },
    ]);
  });
});

describe("silence", () => {
  it("[E17] has the first reason that applies, and keeps them all", () => {
    const claims = [
      { ...introduced("1790"), region: "south", hardness: "practice" },
      { id: "open", relation: "requires", subject: "F", ways: [["T"]], closed: false },
      { ...gone("1750"), id: "void" },
      { id: "unless", relation: "void when", of: "void", condition: "G" },
      { id: "endless", relation: "introduced", subject: "F", when: "[..1750]" },
    ] as const;
    const found = findSketch(claims, {
      region: "north",
      observations: [{ id: "g", part: "top", feature: "G" }],
    });
    expect(found.reason).toBe("defeated");
    expect(found.reasons).toEqual(["defeated", "out-of-scope", "open-list", "unknown-end"]);
  });

  it("[E17] comes from the way that is not bounded, not from those that are", () => {
    const claims = [
      needs([["A"], ["B"]]),
      introduced("1790", "A"),
      { ...gone("1750", "A"), region: "south" },
    ] as const;
    expect(findSketch(claims, { region: "north" }).reasons).toEqual(["undated"]);
  });

  it("[E17] of a circle that nothing dates is that nothing dates it", () => {
    expect(findSketch([needs([["A"]]), needs([["F"]], "A")])).toMatchObject({ reasons: ["undated"] });
  });
});

describe("support", () => {
  it("[E19] leaves out what the contradiction does not need", () => {
    const claims = [
      needs([["A", "B"], ["C"]]),
      ...[introduced("1700", "A"), introduced("1720", "B"), gone("1745", "B"), introduced("1830", "C")],
    ] as const;
    expect(findSketch(claims).support.claims).toEqual(["B-out", "C-in", "F-needs"]);
  });

  it("[E19] of what is consistent gives its years exactly", () => {
    const claims = [introduced("1700"), { ...introduced("1650"), id: "B" }, gone("1800")] as const;
    const loose = [claims[0], { ...claims[1], relation: "common from" }, claims[2]] as const;
    expect(findSketch(loose).support.claims).toEqual(["F-in", "F-out"]);
  });

  it("[E19] prefers fewer claims, then the first ids, and claims to an assumption", () => {
    const far = { ...introduced("1795"), region: "south", id: "a-far" } as const;
    const longer = [needs([["T"]]), { ...introduced("1790", "T"), id: "t" }] as const;
    expect(findSketch([far, ...longer], { region: "north" }).support).toEqual({
      claims: ["F-needs", "t"],
      assumptions: [],
    });
    const two = [
      { ...introduced("1790"), id: "b" },
      { ...introduced("1790"), id: "a", relation: "common from" },
    ] as const;
    expect(findSketch(two).support.claims).toEqual(["b"]);
  });

  it.each([3, 4])("[E19] is found where %d windows are needed together", (count) => {
    const absent = Array.from({ length: count }, (_, i) => {
      const when = `${1760 + 4 * i}/${1763 + 4 * i}`;
      return { id: `n${i}`, relation: "not found in", subject: "F", when } as const;
    });
    const other = { ...introduced("1700"), id: "other" };
    const found = findSketch([...absent, other], { date: `1760/${1759 + 4 * count}` });
    expect(found).toMatchObject({ label: "contradictory", hardness: "practice", direction: "gap" });
    expect(found.support.claims).toEqual(absent.map(({ id }) => id));
  });
});

describe("a derivation", () => {
  it("[E20] tells a shared step once", () => {
    const claims = [
      needs([["A"], ["B"]]),
      needs([["T"]], "A"),
      needs([["T"]], "B"),
      introduced("1790", "T"),
    ] as const;
    const { derivation } = findSketch([...claims, { ...gone("1900", "T") }, { ...introduced("1700", "F") }]);
    expect(derivation).toMatchObject({
      ...{ kind: "derived", ref: 1, term: "F", by: "any-way", years: [[1790, null]] },
      from: [
        { kind: "claim", claim: "F-needs" },
        {
          kind: "derived",
          ref: 2,
          term: "A",
          by: "any-way",
          from: [{ claim: "A-needs" }, { claim: "T-in" }],
        },
        { kind: "derived", ref: 3, term: "B", by: "any-way" },
      ],
    });
  });

  it("[E20] refers back to a step with more than one reason", () => {
    const ways = [needs([["A"], ["B"]]), needs([["T"]], "A"), needs([["T"]], "B")] as const;
    const { derivation } = findSketch([...ways, introduced("1700", "T"), gone("1800", "T")]);
    const text = JSON.stringify(derivation);
    expect(text.match(/"kind":"told","ref":(\d+)/)?.[1]).toBe(text.match(/"ref":(\d+),"term":"T"/)?.[1]);
  });
});

describe("paths", () => {
  const claims = [
    needs([["A", "B"], ["C"]]),
    introduced("1700", "A"),
    gone("1745", "B"),
    introduced("1830", "C"),
  ] as const;
  const labels = (date: string) =>
    findSketch(claims, { date }).paths.map(({ dated, label, hardness }) =>
      `${dated} ${label} ${hardness ?? ""}`.trim(),
    );

  it("[E21] through an impossible way are excluded while another way is open", () => {
    expect(labels("1735/1745")).toEqual([
      "C-in way-excluded physical",
      "B-out consistent",
      "A-in consistent",
    ]);
  });

  it("[E21] contradict where no way is left, and are excluded by their way if they do not themselves", () => {
    expect(labels("1760/1775")).toEqual([
      "C-in contradictory practice",
      "B-out contradictory practice",
      "A-in way-excluded practice",
    ]);
  });

  it("[E21] never read as impossible what is merely unusual", () => {
    // The first way is physically closed, the second by habit alone: nothing is ruled out.
    const found = findSketch([needs([["A"], ["B"]]), introduced("1790", "A"), gone("1750", "B")]);
    expect(found.hardness).toBe("practice");
    expect(found.paths.map(({ dated, label, hardness }) => [dated, label, hardness])).toEqual([
      ["A-in", "contradictory", "practice"],
      ["B-out", "contradictory", "practice"],
    ]);
  });

  it("[E21] say which ways are open", () => {
    expect(findSketch(claims, { date: "1735/1745" }).ways).toEqual([
      {
        ...{ claim: "F-needs", term: "F" },
        ways: [
          { terms: ["A", "B"], open: true, years: [[1700, 1745]] },
          { terms: ["C"], open: false, years: [[1830, null]] },
        ],
      },
    ]);
  });

  it("[E21] end silently where nothing dates them, each for its reason", () => {
    const silent = [
      { ...needs([["A"]]), closed: false },
      introduced("1790", "A"),
      { ...gone("1700"), region: "south" },
    ] as const;
    expect(findSketch(silent, { region: "north" }).paths).toMatchObject([
      { via: ["F-needs"], terms: ["F", "A"], dated: "A-in", label: "silent", reason: "open-list" },
      { via: [], terms: ["F"], dated: "F-out", label: "silent", reason: "out-of-scope" },
    ]);
    expect(findSketch([]).paths).toMatchObject([{ terms: ["F"], label: "silent", reason: "undated" }]);
  });

  it("[E21] end at a list that does not apply", () => {
    const { paths } = findSketch([{ ...needs([["A"]]), region: "south" }], { region: "north" });
    expect(paths).toMatchObject([
      { via: ["F-needs"], terms: ["F"], label: "silent", reason: "out-of-scope" },
    ]);
    expect(paths[0]).not.toHaveProperty("dated");
  });

  it("[E21] cite every claim they pass, with its basis", () => {
    const cited = {
      ...introduced("1790", "A"),
      citations: [{ basis: "published", source: "source.x", locator: "p. 3" }] as never,
    };
    expect(findSketch([needs([["A"]]), cited]).paths[0]?.cites).toEqual([
      { claim: "F-needs", basis: "common practice" },
      { claim: "A-in", basis: "published", source: "source.x", locator: "p. 3" },
    ]);
  });

  it("[E21] are all counted, and listed up to the assumed number, those of the support first", () => {
    const layers = 14;
    const ladder = Array.from({ length: layers }, (_, i) =>
      needs([[`L${i + 1}`], [`R${i + 1}`]], i === 0 ? "F" : `L${i}`),
    );
    const rungs = Array.from({ length: layers - 1 }, (_, i) =>
      needs([[`L${i + 2}`], [`R${i + 2}`]], `R${i + 1}`),
    );
    const ends = [introduced("1790", `L${layers}`), introduced("1795", `R${layers}`)];
    const found = findSketch([...ladder, ...rungs, ...ends]);
    expect(found.pathCount).toBe(2 ** layers);
    expect(found.paths).toHaveLength(ASSUMED.pathsListed);
    expect(found.label).toBe("contradictory");
  });

  it("[E21] that come back to a term end there", () => {
    const circle = [needs([["A"]]), needs([["F"]], "A"), introduced("1750", "A")] as const;
    const found = findSketch(circle);
    expect(found.pathCount).toBe(2);
    expect(found.paths.map(({ terms }) => terms.join(">"))).toEqual(["F>A", "F>A>F"]);
  });
});

describe("the attribution's own form, style and maker", () => {
  const terms = [
    ...NORTH_AND_SOUTH,
    ...aTree("form", { chest: {} }),
    aTerm("S", "style"),
    aTerm("M", "maker"),
  ];
  const claims = [
    { id: "style", relation: "current", subject: "S", when: "1700/1740" },
    { id: "maker", relation: "active", subject: "M", when: "1780/1800" },
  ] as const;

  it("[E22] are checked like observations of the whole, style softly and maker hard", () => {
    const { findings } = examineSketch(claims, { style: "S", maker: "M", form: "chest" }, terms);
    expect(findings).toMatchObject([
      { id: "attr.maker", label: "contradictory", hardness: "physical", direction: "late" },
      { id: "attr.style", label: "contradictory", hardness: "practice", direction: "early" },
      { id: "attr.form", label: "silent", reason: "undated" },
    ]);
    expect(findings[0]).not.toHaveProperty("observation");
    expect(findings[0]).not.toHaveProperty("part");
  });

  it("[E24] stand in rule-outs as what is claimed", () => {
    const { ruleOuts } = examineSketch(claims, { style: "S", maker: "M" }, terms);
    const atoms = ruleOuts.map((ruleOut) =>
      ruleOut.atoms.map((atom) => ("of" in atom ? atom.of : atom.kind)),
    );
    expect(atoms).toEqual([
      ["date", "maker", "claim"],
      ["maker", "style", "claim", "claim"],
      ["date", "style", "claim"],
    ]);
    expect(ruleOuts.every(({ against }) => against === "attribution")).toBe(true);
  });
});

describe("the order of findings", () => {
  it("[E23] is by weight: hardness, empty sets, distance, narrowness, id", () => {
    const claims = [
      { ...introduced("1790", "hard"), id: "c1" },
      { ...gone("1700", "softer"), id: "c2" },
      { ...gone("1740", "soft"), id: "c3" },
      { id: "c4", relation: "confined to", subject: "nowhere", regions: ["south"] },
      { ...introduced("1700", "open"), id: "c5" },
      { id: "c6", relation: "current", subject: "narrow", when: "1750/1800" },
    ] as const;
    const features = ["silent", "open", "narrow", "soft", "softer", "nowhere", "hard"];
    const { findings } = examineSketch(claims, {
      region: "north",
      observations: features.map((feature) => ({ id: `o-${feature}`, part: "top", feature })),
    });
    expect(findings.map(({ id }) => id)).toEqual(
      ["hard", "nowhere", "softer", "soft", "narrow", "open", "silent"].map((feature) => `o-${feature}`),
    );
  });
});
