import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id } from "#server/domain/ids.ts";
import { POSITIONS } from "#server/domain/position.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { answersInWords } from "#server/reasoning/explain/plan-in-words.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { drawUpPlan, type PlanAsk } from "#server/reasoning/plan/draw-up-plan.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";

const term = (name: string, rest: object = {}): Term =>
  ({ id: name, kind: name.split(".")[0] as TermKind, label: name, ...rest }) as Term;
const seenBy = (move: string) => ({ looking: { how: "Look.", move, basis: "common practice" } });
const feature = (name: string, parts: readonly string[], move = "nothing", rest: object = {}) =>
  term(`feature.${name}`, { parts, ...seenBy(move), ...rest });

const terms: readonly Term[] = [
  term("form.chest", { parts: ["part.carcase", "part.back", "part.drawer", "part.foot"] }),
  ...["part.carcase", "part.back", "part.drawer", "part.foot", "part.splat"].map((name) => term(name)),
  term("part.drawer-bottom", { broader: "part.drawer" }),
  feature("late-nail", ["part.back"], "piece turned"),
  feature("assumed-nail", ["part.back"], "piece turned"),
  feature("slips", ["part.drawer-bottom"], "drawer out"),
  feature("splay", ["part.foot"]),
  feature("bright-edge", ["part.carcase"]),
  feature("pigment", ["part.carcase"], "sample taken"),
  feature("pierced", ["part.splat"]),
  feature("dull", ["part.carcase"]),
  feature("saw", ["part.carcase", "part.back"], "piece turned"),
  feature("round-saw", ["part.carcase", "part.back"], "piece turned", { broader: "feature.saw" }),
  feature("straight-saw", ["part.carcase", "part.back"], "piece turned", { broader: "feature.saw" }),
];
const claims: readonly ClaimSketch[] = [
  { id: "c.late", relation: "introduced", subject: "feature.late-nail", when: "1880" },
  {
    id: "c.else",
    relation: "introduced",
    subject: "feature.assumed-nail",
    when: "1880",
    region: "region.other",
  },
  { id: "c.slips", relation: "common from", subject: "feature.slips", when: "1820" },
  { id: "c.splay", relation: "current", subject: "feature.splay", when: "1765/1775" },
  {
    id: "c.bright",
    relation: "indicates",
    subject: "feature.bright-edge",
    states: ["later"],
    strength: "firm",
  },
  { id: "c.pigment", relation: "introduced", subject: "feature.pigment", when: "1900" },
  { id: "c.pierced", relation: "introduced", subject: "feature.pierced", when: "1750" },
  { id: "c.round", relation: "introduced", subject: "feature.round-saw", when: "1800" },
  { id: "c.straight", relation: "introduced", subject: "feature.straight-saw", when: "1700" },
];
const regions = [term("region.here"), term("region.other")];
const graph = knowGraph(neighbourhoodOf([...terms, ...regions], claims.map(aClaim)), ASSUMED);
const ASK: PlanAsk = {
  ...{ form: id("form.chest"), region: id<"term">("region.here"), date: "1765/1775", examined: 2026 },
};
const plan = (more: Partial<PlanAsk> = {}) =>
  inOneGo(drawUpPlan({ ...ASK, ...more }, terms, graph, ASSUMED_ODDS));
const items = (more: Partial<PlanAsk> = {}) => plan(more).items.map(({ item }) => item);
const itemOf = (name: string) => {
  const found = items().find((item) => item.feature === `feature.${name}`);
  if (found === undefined) throw new Error(`${name} is not on the plan`);
  return found;
};

describe("[N11] a plan of a look", () => {
  it("has what tells something on the parts of the form, and nothing else", () => {
    expect(
      items()
        .map((item) => item.feature.replace("feature.", ""))
        .sort(),
    ).toEqual(["assumed-nail", "bright-edge", "late-nail", "round-saw", "slips", "splay"]);
    expect(plan().parts).toEqual(["part.carcase", "part.back", "part.drawer", "part.foot"]);
  });

  it("looks on the whole that the form names for what belongs to a narrower part", () => {
    expect(itemOf("slips").kindOfPart).toBe("part.drawer");
  });

  it("asks for one of a family, and names the other part on which it would tell", () => {
    const { kindOfPart, alsoOn } = itemOf("round-saw");
    expect([kindOfPart, ...alsoOn].sort()).toEqual(["part.back", "part.carcase"]);
  });

  it("carries the claims that it rests on", () => {
    expect(itemOf("late-nail").claims).toEqual(["c.late"]);
    expect(itemOf("bright-edge").claims).toEqual(["c.bright"]);
  });
});

describe("[N12] the order of a plan", () => {
  it("goes round the piece, and in each place from what tells most", () => {
    const all = items();
    const places = all.map(({ position }) => POSITIONS.indexOf(position));
    expect(places).toEqual([...places].sort());
    for (const position of POSITIONS) {
      const ranks = all.filter((item) => item.position === position).map(({ rank }) => rank);
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    }
    expect(all.map(({ rank }) => rank).sort((a, b) => a - b)).toEqual(all.map((_, i) => i + 1));
    expect(itemOf("slips").position).toBe("drawers out");
    expect(itemOf("late-nail").position).toBe("back");
  });

  it("[N14] does not hang on the order in which the terms come", () => {
    const turned = inOneGo(drawUpPlan(ASK, [...terms].reverse(), graph, ASSUMED_ODDS));
    expect(turned.items.map(({ item }) => item)).toEqual(items());
  });
});

describe("[N13] what each answer would do", () => {
  it("rules the claim out by claims alone; where it rests on the fall-back it only speaks against", () => {
    expect(itemOf("late-nail").ifSeen.claim).toBe("rules out");
    expect(itemOf("assumed-nail").ifSeen.claim).toBe("against");
  });

  it("speaks against by habit, and for what is of just those years", () => {
    expect(itemOf("slips").ifSeen.claim).toBe("against");
    const { ifSeen, ifAbsent } = itemOf("splay");
    expect(ifSeen.claim).toBe("for");
    expect(ifSeen.log10).toBeGreaterThan(0.1);
    expect(ifAbsent.log10).toBeLessThan(0);
  });

  it("speaks for a state by a sign, which says nothing of the years", () => {
    expect(itemOf("bright-edge").ifSeen).toMatchObject({ claim: "says nothing", state: "later" });
  });

  it("turns with the claim", () => {
    const late = items({ date: "1890/1900" }).find((item) => item.feature === "feature.late-nail");
    expect(late?.ifSeen.claim).toBe("for");
  });

  it("is said in words", () => {
    expect(answersInWords(itemOf("late-nail"), "1765 to 1775").ifSeen).toBe(
      "rules 1765 to 1775 out for the part; speaks for a later part",
    );
    expect(answersInWords(itemOf("bright-edge"), "1765 to 1775")).toEqual({
      ...{ ifSeen: "speaks for a later part", ifAbsent: "says next to nothing by itself" },
    });
    expect(answersInWords(itemOf("splay"), "1765 to 1775").ifSeen).toMatch(/^speaks \w+ly for 1765 to 1775/);
  });
});
