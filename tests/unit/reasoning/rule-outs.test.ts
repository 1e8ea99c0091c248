import { describe, expect, it } from "vitest";
import type { Atom, RuleOut } from "#server/domain/report.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch, NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

const since = (subject: string, when: string) =>
  ({ id: `${subject}-in`, relation: "introduced", subject, when }) as const;
const until = (subject: string, when: string) =>
  ({ id: `${subject}-out`, relation: "discontinued", subject, when, hardness: "physical" }) as const;
const on = (part: string, ...features: string[]) =>
  features.map((feature) => ({ id: `o-${feature}`, part, feature }));

function name(atom: Atom): string {
  switch (atom.kind) {
    case "attr":
      return atom.of;
    case "original":
      return `original ${atom.part}`;
    case "observation":
      return atom.observation;
    case "separate":
      return `separate ${atom.parts.join("+")}`;
    case "claim":
      return atom.claim;
    case "rivals":
      return atom.claims.join("|");
    case "assumption":
      return atom.assumption;
  }
}
const told = ({ hardness, against, atoms }: RuleOut): string =>
  `${hardness} ${against}: ${atoms.map(name).join(", ")}`;

describe("rule-outs", () => {
  it("[E24] set one window against the claimed years, with the part's being original in question", () => {
    const { ruleOuts } = examineSketch([since("A", "1790")], { observations: on("top", "A") });
    expect(ruleOuts.map(told)).toEqual(["physical attribution: date, original top, o-A, A-in"]);
    expect(ruleOuts[0]).toMatchObject({ findings: ["o-A"], parts: ["top"], gapYears: 15 });
    expect(ruleOuts[0]?.id).toMatch(/^rule-out\.[0-9a-f]{16}$/);
  });

  it("[E25] set two windows on two parts against each other, both originals in question", () => {
    const { ruleOuts } = examineSketch([since("A", "1770"), until("B", "1765")], {
      observations: [...on("top", "A"), ...on("base", "B")],
    });
    expect(ruleOuts.map(told)).toEqual([
      "physical parts: original base, original top, o-A, o-B, A-in, B-out",
    ]);
    expect(ruleOuts[0]).toMatchObject({ findings: ["o-A", "o-B"], parts: ["base", "top"], gapYears: 5 });
  });

  it("[E25] on one part leave it open whether that is original", () => {
    const { ruleOuts } = examineSketch([since("A", "1770"), until("B", "1765")], {
      observations: on("top", "A", "B"),
    });
    expect(ruleOuts.map(told)).toEqual(["physical observation: o-A, o-B, A-in, B-out"]);
  });

  it("[E25] on parts that are together are like those on one part", () => {
    const { ruleOuts } = examineSketch([since("A", "1770"), until("B", "1765")], {
      observations: [...on("top", "A"), ...on("base", "B")],
      together: [["top", "base"]],
    });
    expect(ruleOuts.map(told)).toEqual(["physical parts: o-A, o-B, A-in, B-out"]);
  });

  it("[E28] name parts that are recorded as separate", () => {
    const { ruleOuts } = examineSketch([], { parts: ["top", "base"], separate: [["top", "base"]] });
    expect(ruleOuts.map(told)).toEqual(["physical parts: original base, original top, separate base+top"]);
    expect(ruleOuts[0]).toMatchObject({ findings: [], places: [{ region: null, elsewhere: false }] });
  });

  it("[E25] of a window that contradicts itself have no attribution in them", () => {
    const claims = [since("F", "1770"), until("F", "1765")];
    const { ruleOuts } = examineSketch(claims, { observations: on("top", "F") });
    expect(ruleOuts.map(told)).toEqual(["physical observation: o-F, F-in, F-out"]);
  });

  it("[E25] hold that nothing is later than the day it was looked at", () => {
    const { ruleOuts } = examineSketch([since("A", "1900")], {
      ...{ date: "1760/1890", examined: 1890 },
      observations: on("top", "A"),
    });
    expect(ruleOuts.map(told)).toEqual(["physical observation: o-A, A-in"]);
  });

  it("[E26] that rest on a habit are told apart, and never repeat what is physical", () => {
    const claims = [
      since("A", "1790"),
      { ...since("A", "1800"), id: "habit", relation: "common from" },
      { id: "style", relation: "current", subject: "B", when: "1700/1740" },
    ] as const;
    const { ruleOuts } = examineSketch(claims, { observations: [...on("top", "A"), ...on("base", "B")] });
    expect(ruleOuts.map(told)).toEqual([
      "physical attribution: date, original top, o-A, A-in",
      "practice attribution: date, original top, o-A, habit",
      "practice attribution: date, original base, o-B, style",
      "practice parts: original base, original top, o-A, o-B, habit, style",
      "practice parts: original base, original top, o-A, o-B, A-in, style",
    ]);
  });

  it("[E26] contain no other rule-out", () => {
    const claims = [
      { id: "needs", relation: "requires", subject: "A", ways: [["T"]] },
      since("T", "1790"),
      since("A", "1790"),
    ] as const;
    const { ruleOuts } = examineSketch(claims, { observations: on("top", "A") });
    expect(ruleOuts.map(told)).toEqual([
      "physical attribution: date, original top, o-A, A-in",
      "physical attribution: date, original top, o-A, T-in, needs",
    ]);
  });

  it("[E24] put the claimed form and region in question where a claim is scoped by them", () => {
    const terms = [...NORTH_AND_SOUTH, ...aTree("form", { chest: {} })];
    const claims = [{ ...since("A", "1790"), region: "north", form: "chest" }] as const;
    const observations = on("top", "A");
    const { ruleOuts } = examineSketch(claims, { region: "town", form: "chest", observations }, terms);
    expect(ruleOuts.map(told)).toEqual(["physical attribution: date, form, region, original top, o-A, A-in"]);
  });

  it("[E29] take no notice of signs, of what was not seen, or of disputed claims that leave it open", () => {
    const claims = [
      { id: "sign", relation: "indicates", subject: "S", states: ["later"] },
      since("A", "1790"),
      since("B", "1790"),
      { ...since("B", "1750"), id: "B-too" },
    ] as const;
    const { ruleOuts } = examineSketch(claims, {
      observations: [
        ...on("top", "S", "B"),
        { id: "a", part: "top", feature: "A", seen: "absent" },
        { id: "u", part: "top", feature: "A", seen: "unseen" },
      ],
    });
    expect(ruleOuts).toEqual([]);
  });

  it("[E33] have ids that do not change with what else is found", () => {
    const alone = examineSketch([since("A", "1790")], { observations: on("top", "A") });
    const among = examineSketch([since("A", "1790"), since("B", "1850")], {
      observations: on("top", "A", "B"),
    });
    expect(among.ruleOuts.map(({ id }) => id)).toContain(alone.ruleOuts[0]?.id);
  });
});

describe("windows with gaps", () => {
  const twoWays = (feature: string, first: string, second: string) =>
    [
      { id: `${feature}-1`, relation: "active", subject: feature, when: first },
      { id: `${feature}-2`, relation: "active", subject: feature, when: second },
    ] as const;

  it("[E27] that contradict by themselves are found", () => {
    const { ruleOuts, notSearched } = examineSketch(twoWays("A", "1700/1740", "1790/1800"), {
      observations: on("top", "A"),
    });
    expect(ruleOuts.map(told)).toEqual(["physical attribution: date, original top, o-A, A-1|A-2"]);
    expect(notSearched).toEqual([]);
  });

  it("[E27] that contradict only three at a time on one feature are found by their support", () => {
    const absent = [1760, 1764, 1768].map(
      (year) =>
        ({ id: `n${year}`, relation: "not found in", subject: "A", when: `${year}/${year + 3}` }) as const,
    );
    const { ruleOuts } = examineSketch(absent, { date: "1760/1771", observations: on("top", "A") });
    expect(ruleOuts.map(told)).toEqual([
      "practice attribution: date, original top, o-A, n1760, n1764, n1768",
    ]);
  });

  it("[E27] are found where two others leave only years of the gap", () => {
    const claims = [...twoWays("A", "1700/1762", "1773/1800"), since("B", "1765")];
    const piece = { date: "1760/1770", observations: [...on("top", "A"), ...on("base", "B")] };
    const { ruleOuts, notSearched, complete } = examineSketch(claims, piece);
    expect(ruleOuts.map(told)).toEqual([
      "physical attribution: date, original base, original top, o-A, o-B, B-in, A-1|A-2",
    ]);
    expect(ruleOuts[0]).toMatchObject({ findings: ["o-A", "o-B"], gapYears: 3 });
    expect([notSearched, complete]).toEqual([[], true]);
  });

  it("[E27] rule nothing out where a year of every run is left", () => {
    const claims = [...twoWays("A", "1700/1766", "1773/1800"), since("B", "1765")];
    const piece = { date: "1760/1770", observations: [...on("top", "A"), ...on("base", "B")] };
    expect(examineSketch(claims, piece)).toMatchObject({ ruleOuts: [], notSearched: [], complete: true });
  });
});

describe("what was not searched", () => {
  it("[E27] names claims whose loss would bring back one that they override", () => {
    const claims = [
      { ...since("A", "1790"), region: "north" },
      { ...since("A", "1780"), id: "wide" },
    ] as const;
    const { notSearched } = examineSketch(claims, { region: "north", observations: on("top", "A") });
    expect(notSearched).toEqual([{ why: "claims-given-up", findings: ["o-A"] }]);
  });

  it("[E27] names findings with more proofs than are kept", () => {
    const ways = Array.from({ length: 4 }, (_, i) => [`T${i}`]);
    const own = ways.flatMap(([term]) =>
      Array.from({ length: 4 }, (_, i) => ({ ...since(`${term}`, "1790"), id: `${term}-${i}` })),
    );
    const report = examineSketch([{ id: "needs", relation: "requires", subject: "A", ways }, ...own], {
      observations: on("top", "A"),
    });
    expect(report.notSearched).toEqual([{ why: "too-many-proofs", findings: ["o-A"] }]);
    expect(report.findings[0]).toMatchObject({ label: "contradictory", support: { assumptions: [] } });
    expect(report.findings[0]?.support.claims).toHaveLength(5);
  });
});

describe("many rule-outs", () => {
  it("[E35] come with what takes least to give up first", () => {
    const terms = [...NORTH_AND_SOUTH, ...aTree("part", { "part.carcase": {}, "part.foot": {} })];
    const { ruleOuts, ruleOutCount } = examineSketch(
      [since("A", "1850"), since("B", "1790")],
      {
        parts: [
          { id: "case", kind: "part.carcase" },
          { id: "feet", kind: "part.foot" },
        ],
        observations: [...on("case", "A"), ...on("feet", "B")],
      },
      terms,
    );
    expect(ruleOuts.map(({ parts }) => parts)).toEqual([["feet"], ["case"]]);
    expect(ruleOutCount).toEqual({
      ...{ count: 2, isLowerBound: false },
      byPart: [
        { part: "case", count: 1, first: ruleOuts[1]?.id },
        { part: "feet", count: 1, first: ruleOuts[0]?.id },
      ],
      byClaim: [
        { claim: "A-in", count: 1, first: ruleOuts[1]?.id },
        { claim: "B-in", count: 1, first: ruleOuts[0]?.id },
      ],
    });
  });

  it("[E35] are all counted, and of each part and claim one is listed", () => {
    const late = Array.from({ length: 18 }, (_, n) => `L${n}`);
    const early = Array.from({ length: 18 }, (_, n) => `E${n}`);
    const claims = [...late.map((name) => since(name, "1790")), ...early.map((name) => until(name, "1740"))];
    const { ruleOuts, ruleOutCount, complete } = examineSketch(claims, {
      observations: [...late, ...early].flatMap((name) => on(`part of ${name}`, name)),
    });
    expect([ruleOutCount.count, ruleOutCount.isLowerBound, complete]).toEqual([36 + 18 * 18, false, true]);
    expect(ruleOuts).toHaveLength(300);
    expect(ruleOutCount.byPart.map(({ count }) => count)).toEqual(Array.from({ length: 36 }, () => 19));
    const listed = new Set(ruleOuts.map(({ id }) => id));
    for (const { first } of [...ruleOutCount.byPart, ...ruleOutCount.byClaim])
      expect(listed).toContain(first);
  });

  it("[E27] are a lower bound where the search met its budget, and say among what", () => {
    const names = Array.from({ length: 14 }, (_, n) => `G${n}`);
    // Each leaves out one of fourteen stretches of years: only all together leave none.
    const claims = names.flatMap((subject, n) =>
      names.flatMap((_, era) =>
        era === n
          ? []
          : [
              {
                ...{ id: `${subject}-${era}`, subject },
                relation: "active",
                when: `${1600 + 20 * era}/${1609 + 20 * era}`,
              } as const,
            ],
      ),
    );
    const all = examineSketch(claims, { date: "1600/1879", observations: on("top", ...names) });
    expect([all.ruleOuts.length, all.complete]).toEqual([1, true]);
    expect(all.ruleOuts[0]?.findings).toHaveLength(14);
    const twins = names.flatMap((name) =>
      [0, 1, 2].map((n) => ({ id: `${name}-${n}`, part: "top", feature: name })),
    );
    const many = examineSketch(claims, { date: "1600/1879", observations: twins });
    expect(many.ruleOutCount.isLowerBound).toBe(true);
    expect(many.ruleOutCount.count).toBeGreaterThanOrEqual(300);
    expect(many.complete).toBe(false);
    expect(many.notSearched).toEqual([
      { why: "too-many-rule-outs", findings: twins.map(({ id }) => id).sort() },
    ]);
  });
});

describe("a part from a region of its own", () => {
  const confined = (subject: string, ...regions: string[]) =>
    ({ id: `${subject}-c`, relation: "confined to", subject, regions, hardness: "physical" }) as const;

  it("[E27] is ruled out by what no one place there allows, though each two of them go together", () => {
    const claims = [
      confined("A", "town", "farm"),
      confined("B", "farm", "south"),
      confined("C", "south", "town"),
    ];
    const { ruleOuts, complete } = examineSketch(claims, {
      parts: [{ id: "lock", region: "world" }],
      observations: on("lock", "A", "B", "C"),
    });
    expect(ruleOuts.map(told)).toEqual(["physical observation: o-A, o-B, o-C, A-c, B-c, C-c"]);
    expect(complete).toBe(true);
  });

  it("[E27] is ruled out by what holds at one place and at the others, all of it", () => {
    const claims = [
      { ...since("A", "1790"), region: "town" },
      { ...since("B", "1815"), region: "farm" },
      confined("C", "town", "farm"),
    ] as const;
    const { ruleOuts, complete } = examineSketch(claims, {
      parts: [{ id: "lock", region: "world" }],
      observations: on("lock", "A", "B", "C"),
    });
    expect(ruleOuts.map(told)).toContain(
      "physical attribution: date, original lock, o-A, o-B, o-C, A-in, B-in, C-c",
    );
    expect(complete).toBe(true);
  });

  it("[E24] is one part with what it is together with: one atom for both", () => {
    const { ruleOuts } = examineSketch([since("A", "1790"), since("B", "1800")], {
      observations: [...on("top", "A"), ...on("base", "B")],
      together: [["top", "base"]],
    });
    expect(ruleOuts.map(told)).toEqual([
      "physical attribution: date, original base, o-B, B-in",
      "physical attribution: date, original base, o-A, A-in",
    ]);
  });
});
