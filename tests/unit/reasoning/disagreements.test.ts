import { describe, expect, it } from "vitest";
import { findAllDisagreements } from "#server/reasoning/disagreements/find-all.ts";
import { RULE_IDS, type RuleId } from "#server/reasoning/disagreements/rule.ts";
import { DISAGREEMENT_RULES } from "#server/reasoning/disagreements/rules.ts";
import { RULE_WORDS } from "#server/reasoning/explain/disagreement-in-words.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { aTree, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";

const regions = aTree("region", { north: { town: {} }, south: { port: {} } });
const forms = aTree("form", { case: { chest: {} } });

type Sketch = Partial<ClaimSketch> & Pick<ClaimSketch, "id" | "relation">;
const found = (rule: RuleId, sketches: readonly Sketch[]) => {
  const claims = sketches.map((sketch) => aClaim({ subject: "F", ...sketch }));
  const { terms } = neighbourhoodOf([...regions, ...forms], claims);
  return findAllDisagreements(terms, claims).get(rule) ?? [];
};
const cites = (source: string) =>
  [{ basis: "published", source, locator: "p. 1" }] as unknown as NonNullable<ClaimSketch["citations"]>;

const introduced = { id: "introduced", relation: "introduced", region: "north", when: "1790" } as const;

describe("[Q1] the rules", () => {
  it("are in one order, each with its words", () => {
    expect(DISAGREEMENT_RULES.map(({ id }) => id)).toEqual(RULE_IDS);
    expect(Object.keys(RULE_WORDS)).toEqual(RULE_IDS);
  });

  it("see only accepted claims", () => {
    const rival = { ...introduced, id: "late", when: "1800" } as const;
    expect(found("rivals", [introduced, rival])).toHaveLength(1);
    expect(found("rivals", [introduced, { ...rival, status: "rejected" }])).toEqual([]);
    expect(found("rivals", [introduced, { ...rival, status: "proposed" }])).toEqual([]);
  });

  it("give the same whatever the order of the claims, the farthest apart first", () => {
    const sketches: Sketch[] = [
      introduced,
      { id: "b", relation: "attested", region: "north", when: "1780" },
      { id: "a", relation: "attested", region: "town", when: "1789" },
      { id: "c", relation: "attested", region: "north", when: "1770" },
    ];
    const there = found("attested-before-introduced", sketches);
    expect(there.map(({ years }) => years)).toEqual([20, 10, 1]);
    expect(found("attested-before-introduced", sketches.toReversed())).toEqual(there);
  });
});

describe("[Q2] on record before it was introduced", () => {
  const rule = "attested-before-introduced";
  const attested = { id: "attested", relation: "attested", region: "north", when: "1780" } as const;

  it("is found in the same scope and in a narrower one, with the years between", () => {
    expect(found(rule, [introduced, attested])).toEqual([
      {
        id: `${rule}:attested:introduced`,
        rule,
        term: "F",
        claims: ["attested", "introduced"],
        region: "north",
        years: 10,
      },
    ]);
    expect(found(rule, [introduced, { ...attested, region: "town" }])).toMatchObject([{ region: "town" }]);
    expect(found(rule, [introduced, { ...attested, form: "chest" }])).toHaveLength(1);
  });

  it.each<[string, Sketch]>([
    ["in the year of it", { ...attested, when: "1790" }],
    ["in years that may reach it", { ...attested, when: "1780/1790" }],
    ["about a year near it", { ...attested, when: "1786~" }],
    ["elsewhere", { ...attested, region: "south" }],
    [
      "in a wider place, which may be another part of it",
      { id: "attested", relation: "attested", when: "1780" },
    ],
    ["for another thing", { ...attested, subject: "G" }],
  ])("is not found %s", (_, other) => {
    expect(found(rule, [introduced, other])).toEqual([]);
  });

  it("is found one year before the earliest of a doubtful introduction, and not in that year", () => {
    const about = { ...introduced, when: "1790~" };
    expect(found(rule, [about, { ...attested, when: "1784" }])).toMatchObject([{ years: 1 }]);
    expect(found(rule, [about, { ...attested, when: "1785" }])).toEqual([]);
  });

  it("is not found against a habit, which disputes no record", () => {
    expect(found(rule, [{ ...introduced, hardness: "practice" }, attested])).toEqual([]);
  });
});

describe("[Q3] in use before it was introduced", () => {
  const rule = "common-before-introduced";
  it.each<[Sketch["relation"], string, string]>([
    ["common from", "1789", "1790"],
    ["common until", "1789", "1790"],
    ["current", "1789/1850", "1790/1850"],
    ["active", "../1850", "/1850"],
    ["current", "/1789", "/1790"],
  ])("is found for %s %s and not for %s", (relation, early, late) => {
    const used = { id: "used", relation, region: "town" } as const;
    expect(found(rule, [introduced, { ...used, when: early }])).toHaveLength(1);
    expect(found(rule, [introduced, { ...used, when: late }])).toEqual([]);
  });

  it("counts no years where the use has no beginning", () => {
    const [one] = found(rule, [
      introduced,
      { id: "used", relation: "current", region: "north", when: "../1850" },
    ]);
    expect(one).not.toHaveProperty("years");
  });
});

describe("[Q4] earlier in a part than in the whole", () => {
  const rule = "narrower-before-wider";
  const inTown = { id: "town", relation: "introduced", region: "town", when: "1789" } as const;

  it("is found for a place within a place, and for a form within a form", () => {
    expect(found(rule, [introduced, inTown])).toMatchObject([
      { claims: ["town", "introduced"], region: "town", years: 1 },
    ]);
    const cases: Sketch = { ...introduced, id: "cases", form: "case" };
    expect(found(rule, [cases, { ...cases, id: "chests", form: "chest", when: "1780" }])).toHaveLength(1);
  });

  it.each<[string, Sketch]>([
    ["in the same year", { ...inTown, when: "1790" }],
    ["later", { ...inTown, when: "1800" }],
    ["in the same scope, where the two are rivals", { ...inTown, region: "north" }],
    ["beside it", { ...inTown, region: "south" }],
    ["by habit", { ...inTown, hardness: "practice" }],
  ])("is not found %s", (_, other) => {
    expect(found(rule, [introduced, other])).toEqual([]);
  });
});

describe("[Q5] rivals", () => {
  const late: Sketch = { ...introduced, id: "late", when: "1800" };

  it("are one finding for one scope, with those that take part in the quarrel", () => {
    const agrees: Sketch = { ...introduced, id: "wide", when: "1780/1810" };
    expect(found("rivals", [introduced, late, agrees])).toEqual([
      {
        id: "rivals:introduced:late",
        ...{ rule: "rivals", term: "F", claims: ["introduced", "late"], relation: "introduced" },
        ...{ region: "north", years: 10 },
      },
    ]);
  });

  it("disagree on the end of a span, or on its beginning", () => {
    const span = (id: string, when: string): Sketch => ({ id, relation: "current", when });
    expect(found("rivals", [span("a", "1750/1790"), span("b", "1750/1800")])).toMatchObject([{ years: 10 }]);
    expect(found("rivals", [span("a", "1750/1790"), span("b", "1760/1790")])).toMatchObject([{ years: 10 }]);
    expect(found("rivals", [span("a", "1750/1790"), span("b", "1750/")])).toEqual([]);
    expect(found("rivals", [span("a", "1750/1790"), span("b", "../1790")])).toEqual([]);
  });

  it.each<[string, Sketch]>([
    ["with a year in common", { ...late, when: "1790/1800" }],
    ["that touch in their pads", { ...late, when: "1795~" }],
    ["of two scopes", { ...late, region: "town" }],
    ["of two relations", { ...late, relation: "common from" }],
    ["of two kinds of bound, since a habit disputes no fact", { ...late, hardness: "practice" }],
    ["about two things", { ...late, subject: "G" }],
  ])("are not claims %s", (_, other) => {
    expect(found("rivals", [introduced, other])).toEqual([]);
  });

  it("are not two records, which can both be true", () => {
    const record = (id: string, when: string): Sketch => ({ id, relation: "attested", when });
    expect(found("rivals", [record("a", "1750"), record("b", "1800")])).toEqual([]);
  });
});

describe("[Q6] spread in a circle", () => {
  const rule = "spread-in-a-circle";
  const spread = (id: string, from: string, to: string, least: number): Sketch => ({
    ...{ id, relation: "spread to", from, to, years: [least, least + 5] },
  });

  it("is found once for each circle that takes time, wherever it is entered", () => {
    const circle = [spread("b", "north", "south", 3), spread("a", "south", "north", 2)];
    expect(found(rule, circle)).toEqual([
      { id: `${rule}:a:b`, rule, term: "F", claims: ["a", "b"], region: "south", years: 5 },
    ]);
  });

  it("is found where it goes on from a place within the one it reached", () => {
    const circle = [spread("a", "town", "south", 3), spread("b", "port", "north", 0)];
    expect(found(rule, circle)).toMatchObject([{ claims: ["a", "b"], years: 3 }]);
  });

  it.each<[string, readonly Sketch[]]>([
    ["takes no time at the least", [spread("a", "north", "south", 0), spread("b", "south", "north", 0)]],
    ["leads on and not back", [spread("a", "north", "south", 3), spread("b", "port", "town", 3)].slice(0, 1)],
    [
      "reaches a part and starts in the whole",
      [spread("a", "north", "south", 3), spread("b", "south", "town", 3)],
    ],
    [
      "is of two things",
      [spread("a", "north", "south", 3), { ...spread("b", "south", "north", 3), subject: "G" }],
    ],
  ])("is not found where it %s", (_, spreads) => {
    expect(found(rule, spreads)).toEqual([]);
  });
});

describe("[Q7] a place known from one source", () => {
  const rule = "one-source";
  const claim = (id: string, source?: string, region = "north"): Sketch => ({
    ...{ id, relation: "attested", region, when: "1790" },
    ...(source === undefined ? {} : { citations: cites(source) }),
  });

  it("is found with all its own claims, whatever their basis", () => {
    expect(found(rule, [claim("a", "book"), claim("b", "book"), claim("c")])).toEqual([
      { id: `${rule}:north`, rule, term: "north", region: "north", source: "book", claims: ["a", "b", "c"] },
    ]);
  });

  it("counts neither the claims of places within it nor of those around it", () => {
    expect(found(rule, [claim("a", "book"), claim("b", "paper", "town")])).toHaveLength(2);
  });

  it("is not found with a second source, or without any", () => {
    expect(found(rule, [claim("a", "book"), claim("b", "paper")])).toEqual([]);
    expect(found(rule, [claim("a"), claim("b")])).toEqual([]);
  });
});
