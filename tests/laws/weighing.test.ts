import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Stage, Weighing } from "#server/domain/weighing/weighing.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import type { Model } from "#server/reasoning/dates/model.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { seesAlike, withPriors } from "#server/reasoning/dates/with-priors.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { moreLater } from "#server/reasoning/sensitivity/more-later.ts";
import { subjectIn } from "#server/reasoning/subject-in.ts";
import { weigh } from "#server/reasoning/weigh.ts";
import { wholeWorld } from "#tests/support/any-graph.ts";
import { anyHardQuestion } from "#tests/support/any-weighing.ts";
import { aClaim } from "#tests/support/build-claim.ts";

const STAGES: readonly Stage[] = ["dates", "weights", "sensitivity", "rivals"];
const REGIONS = ["region.north", "region.north-east", "region.south"];
const RUNS = { numRuns: 150 };

const ask = (claims: readonly Claim[], piece: Piece): Weighing =>
  weigh({
    ...{ piece, stages: STAGES, neighbourhood: wholeWorld(claims) },
    ...{ assumptions: ASSUMED, report: { findings: [] } },
  });

/** Members that are null where something is beyond the model, or has no end. */
const MAY_BE_NULL = ["log10", "total", "leaveOneOut", "chain", "evidence", "against", "region"];

/** Where a value has a number that is none, or a null that says nothing. */
function faults(value: unknown, path: readonly string[] = []): readonly string[] {
  if (value === null) return MAY_BE_NULL.includes(path.at(-1) ?? "") ? [] : [path.join(".")];
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path.join(".")];
  if (typeof value !== "object") return value === undefined ? [path.join(".")] : [];
  return Object.entries(value).flatMap(([key, inner]) => faults(inner, [...path, key]));
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, p) => total + p, 0);

/** What every answer keeps to, whatever was asked. */
function expectSound({ dates, weights, sensitivity, rivals, missing }: Weighing): void {
  expect(missing).toEqual([]);
  if (!dates || !weights || !sensitivity || !rivals) throw new Error("a stage is not there");
  expect(sum(dates.whole.odds)).toBeCloseTo(1, 3);
  for (const { odds, prior, made, ifAsClaimed } of dates.parts) {
    for (const states of [odds, prior, ifAsClaimed]) expect(sum(Object.values(states))).toBeCloseTo(1, 4);
    expect(sum(made.odds)).toBeCloseTo(1, 3);
    expect(made.credible.mass).toBeGreaterThan(0.9499);
  }
  expect(sum(dates.places.map(({ probability }) => probability))).toBeCloseTo(1, 4);
  expect(sum(rivals.weighed.map(({ posterior }) => posterior))).toBeCloseTo(1, 4);
  expect(sum(rivals.weighed.map(({ prior }) => prior))).toBeCloseTo(1, 4);
  const chain = weights.steps.map((step) => step.chain);
  if (weights.total !== null && chain.every((step) => step !== null))
    expect(sum(chain)).toBeCloseTo(weights.total, 3);
  const [least, greatest] = sensitivity.claimed;
  expect(least).toBeLessThanOrEqual(greatest);
}

describe("[B9] [B14] [V2] [V6] whatever is asked", () => {
  it("there is an answer that adds up, with no number that is none", () => {
    fc.assert(
      fc.property(anyHardQuestion, ([claims, piece]) => {
        const found = ask(claims, piece);
        expect(faults(found)).toEqual([]);
        expectSound(found);
      }),
      RUNS,
    );
  });

  it("the answer is the same bytes in whatever order parts, observations and claims come", () => {
    fc.assert(
      fc.property(anyHardQuestion, ([claims, piece]) => {
        const turned = {
          ...piece,
          observations: piece.observations.toReversed(),
        };
        expect(canonicalJson(ask(claims.toReversed(), turned))).toBe(canonicalJson(ask(claims, piece)));
      }),
      RUNS,
    );
  });
});

const spoken = (model: Model) => {
  const posterior = weighModel(model);
  const groups = (model.cases[0]?.groups ?? []).map((_, i) => statesOf(posterior, i));
  return { evidence: posterior.logEvidence, years: [...posterior.years], groups };
};

describe("[B14] what is not read again", () => {
  it("[V1] is the same piece from another region as if it had been said to be of that", () => {
    fc.assert(
      fc.property(anyHardQuestion, fc.constantFrom(...REGIONS), ([claims, piece], name) => {
        const region = id<"term">(name);
        const graph = knowGraph(wholeWorld(claims), ASSUMED);
        const there = { ...piece, attribution: { ...piece.attribution, region } };
        const read = (subject: Subject) => spoken(modelReader(subject, ASSUMED_ODDS)());
        const moved = subjectIn(region, readSubject(piece, graph, ASSUMED));
        expect(read(moved)).toEqual(read(readSubject(there, graph, ASSUMED)));
      }),
      RUNS,
    );
  });

  it("[B13] is the same piece with other odds of later parts as if it had been read with them", () => {
    fc.assert(
      fc.property(anyHardQuestion, fc.constantFrom(0.5, 2), ([claims, piece], factor) => {
        const subject = readSubject(piece, knowGraph(wholeWorld(claims), ASSUMED), ASSUMED);
        const odds = moreLater({ ...ASSUMED_ODDS, reuseYears: 120 }, factor);
        const model = modelReader(subject, ASSUMED_ODDS)();
        expect(seesAlike(ASSUMED_ODDS, odds)).toBe(true);
        expect(spoken(withPriors(model, subject, odds))).toEqual(spoken(modelReader(subject, odds)()));
      }),
      RUNS,
    );
  });

  it("is read again under odds that say something else of what was seen", () => {
    for (const changed of [
      { leak: 0.01 },
      { copied: 0.6 },
      { lateSurvival: 0.3 },
      { worlds: 2 },
      { laterWork: 0.1 },
    ])
      expect(seesAlike(ASSUMED_ODDS, { ...ASSUMED_ODDS, ...changed })).toBe(false);
  });
});

/** A piece of many parts, with as many things recorded on them in turn. */
function aLargePiece(parts: number, observations: number, seen: "present" | "unseen" = "present"): Piece {
  const features = ["feature.a", "feature.b", "feature.c", "feature.d", "feature.e"];
  return {
    ...{ title: "A large piece", invented: true, examined: 2026 },
    attribution: { date: "1740/1760", region: id("region.north") },
    parts: Array.from({ length: parts }, (_, i) => ({ id: id(`p${i}`), label: `p${i}` })),
    observations: Array.from({ length: observations }, (_, i) => ({
      ...{
        id: id<"observation">(`o${i}`),
        part: id<"part">(`p${i % parts}`),
        seen,
        sureness: "sure" as const,
      },
      feature: id<"term">(features[Math.floor(i / parts)] as string),
    })),
    ...{ together: [], separate: [] },
  };
}

const LARGE: readonly Claim[] = [
  { id: "claim.a", relation: "introduced", subject: "feature.a", when: "1710", region: "region.north-east" },
  { id: "claim.b", relation: "current", subject: "feature.b", when: "1720/1750" },
  { id: "claim.c", relation: "introduced", subject: "feature.c", when: "1830" },
  { id: "claim.d", relation: "requires", subject: "feature.d", ways: [["tool.a"]] },
  { id: "claim.e", relation: "introduced", subject: "tool.a", when: "1790" },
].map((sketch) => aClaim(sketch as Parameters<typeof aClaim>[0]));

describe("[B14] the largest pieces", () => {
  it.each([
    ["100 parts with 500 things seen on them", aLargePiece(100, 500)],
    ["one part with five things seen on it", aLargePiece(1, 5)],
    ["a part with nothing seen on it", aLargePiece(1, 0)],
    ["30 parts on which nothing could be seen", aLargePiece(30, 60, "unseen")],
  ])("are answered: %s", (_, piece) => {
    const found = ask(LARGE, piece);
    expect(faults(found)).toEqual([]);
    expectSound(found);
    const isTold = piece.observations.some(({ seen }) => seen === "present");
    expect(found.weights?.steps.length !== 0).toBe(isTold);
    if (!isTold) expect(found.dates?.claimed.log10).toBe(0);
  });
});
