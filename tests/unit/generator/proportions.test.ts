import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import type { Graph } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Standing } from "#server/domain/graph-view.ts";
import { hubNumbers, planGraph } from "#server/generator/graph-plan.ts";
import { makeClaims } from "#server/generator/make-claims.ts";
import { makeGraph } from "#server/generator/make-graph.ts";
import { BASES, KINDS, RELATIONS, SEED } from "#server/generator/proportions.ts";
import { WHEN_SHAPES } from "#server/generator/when-shapes.ts";
import { worldOf } from "#server/generator/world.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { graphOf } from "#tests/support/graph-of.ts";

const { change } = answered(await readSeed(fileURLToPath(new URL("../../../seed-data", import.meta.url))));
const seed = graphOf(change.map(({ kind, after }) => ({ kind, thing: after }) as Standing));
/** As large as the seed and with as many claims a term. */
const made = graphOf(makeGraph({ claims: SEED.claims, claimsATerm: SEED.claims / SEED.terms, seed: 1 }));
/** Ten times as large and denser. */
const large = graphOf(makeGraph({ claims: 24_530, claimsATerm: 4, seed: 1 }));

const claimsOf = ({ claims }: Graph): readonly Claim[] => [...claims.values()];

/** Shares of the values, of 1. */
function shares(values: readonly string[]): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const value of values) counts[value] = (counts[value] ?? 0) + 1;
  return Object.fromEntries(Object.entries(counts).map(([value, count]) => [value, count / values.length]));
}

/** The largest difference of two shares of one value. */
function apart(a: readonly string[], b: readonly string[]): number {
  const [ofA, ofB] = [shares(a), shares(b)];
  return Math.max(
    ...Object.keys({ ...ofA, ...ofB }).map((key) => Math.abs((ofA[key] ?? 0) - (ofB[key] ?? 0))),
  );
}

const quantile = (numbers: readonly number[], share: number): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor((numbers.length - 1) * share)] ?? Number.NaN;
const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
const timesEach = (values: readonly string[]): readonly number[] =>
  Object.values(shares(values)).map((share) => share * values.length);

const relations = (graph: Graph) => claimsOf(graph).map(({ relation }) => relation);
const scopes = (graph: Graph) =>
  claimsOf(graph).flatMap((claim) => ("scope" in claim ? [Object.keys(claim.scope).sort().join(" ")] : []));
const needs = (graph: Graph) => claimsOf(graph).filter((claim) => claim.relation === "requires");
const subjects = (graph: Graph) =>
  claimsOf(graph).flatMap((claim) => ("subject" in claim ? [claim.subject] : []));
const bases = (graph: Graph) =>
  claimsOf(graph).flatMap(({ citations }) => citations.map(({ basis }) => basis));
const kinds = (graph: Graph) => [...graph.terms.values()].map(({ kind }) => kind);
const shapes = (graph: Graph) =>
  claimsOf(graph).flatMap((claim) =>
    "when" in claim && claim.when ? [claim.when.replaceAll(/\d/g, "9")] : [],
  );
/** Terms that a feature leads to, itself counted. */
function reaches(graph: Graph): readonly number[] {
  const leads = new Map<string, readonly string[]>();
  for (const claim of needs(graph))
    leads.set(claim.subject, [...(leads.get(claim.subject) ?? []), ...claim.ways.flat()]);
  return [...graph.terms.values()]
    .filter(({ kind }) => kind === "feature")
    .map(({ id }) => {
      const seen = new Set<string>([id]);
      for (const term of seen) for (const next of leads.get(term) ?? []) seen.add(next);
      return seen.size;
    });
}

describe("[U6] the numbers that graphs are made up by are those of the seed, within a tenth of the whole:", () => {
  const ofWeights = (weights: object): readonly string[] =>
    Object.entries(weights).flatMap(([value, count]) => Array<string>(count as number).fill(value));

  it("relations, kinds of term, bases of citations, forms of dates", () => {
    expect(apart(ofWeights(RELATIONS), relations(seed))).toBeLessThan(0.1);
    const withoutPlaces = kinds(seed).filter((kind) => kind !== "region" && kind !== "part");
    expect(apart(ofWeights(KINDS), withoutPlaces)).toBeLessThan(0.1);
    expect(apart(ofWeights(BASES), bases(seed))).toBeLessThan(0.1);
    const written = Object.values(WHEN_SHAPES).flatMap((weights) => ofWeights(weights));
    const plain = written.map((shape) =>
      shape
        .replace("CXX", "99XX")
        .replaceAll(/[AB]X/g, "999X")
        .replaceAll(/[AB]/g, "9999")
        .replaceAll(/[MD]/g, "99"),
    );
    expect(apart(plain, shapes(seed))).toBeLessThan(0.1);
  });

  it("terms, claims, sources, regions and kinds of part", () => {
    const count = (kind: string): number => kinds(seed).filter((each) => each === kind).length;
    const counted = {
      terms: seed.terms.size,
      claims: seed.claims.size,
      sources: seed.sources.size,
      regions: count("region"),
      parts: count("part"),
    };
    for (const [what, number] of Object.entries(counted))
      expect(Math.abs(number / SEED[what as keyof typeof SEED] - 1), what).toBeLessThan(0.25);
  });
});

describe.each([
  ["as large as the seed", made],
  ["ten times as large", large],
])("[U6] a made-up graph %s is like the seed in", (_, graph) => {
  it.each([
    ["relations", relations, 0.03],
    ["what scopes name", scopes, 0.05],
    ["bases of citations", bases, 0.05],
    ["forms of dates", shapes, 0.06],
    ["strengths", (of: Graph) => claimsOf(of).map(({ strength }) => strength), 0.05],
    ["ways of a list", (of: Graph) => needs(of).map(({ ways }) => String(ways.length)), 0.08],
    [
      "terms of a way",
      (of: Graph) => needs(of).flatMap(({ ways }) => ways.map((way) => String(way.length))),
      0.08,
    ],
    ["lists that are closed", (of: Graph) => needs(of).map(({ closed }) => String(closed)), 0.08],
    [
      "citations of a claim",
      (of: Graph) => claimsOf(of).map(({ citations }) => String(citations.length)),
      0.05,
    ],
  ])("%s, each share within the bound", (_, values: (of: Graph) => readonly string[], bound) => {
    expect(apart(values(graph), values(seed))).toBeLessThan(bound);
  });

  it.each([
    [
      "claims",
      (of: Graph) => claimsOf(of).map((claim) => JSON.stringify({ ...claim, row: undefined }).length),
    ],
    ["terms", (of: Graph) => [...of.terms.values()].map((term) => JSON.stringify(term).length)],
    ["sources", (of: Graph) => [...of.sources.values()].map((source) => JSON.stringify(source).length)],
  ])("lengths of %s, the mean within a fifth", (_, lengths) => {
    expect(Math.abs(mean(lengths(graph)) / mean(lengths(seed)) - 1)).toBeLessThan(0.2);
  });
});

describe("[U6] how much hangs on one thing", () => {
  it("is as uneven as in the seed: claims about a term, times a term is needed, times a source is cited", () => {
    const needed = (of: Graph) => needs(of).flatMap(({ ways }) => ways.flat() as readonly string[]);
    const cited = (of: Graph) =>
      claimsOf(of).flatMap(({ citations }) =>
        citations.flatMap((each) => (each.basis === "published" ? [each.source as string] : [])),
      );
    for (const values of [subjects, needed, cited] as const) {
      const [is, was] = [timesEach(values(made)), timesEach(values(seed))];
      expect(Math.abs(mean(is) / mean(was) - 1)).toBeLessThan(0.5);
      expect(quantile(is, 0.99)).toBeGreaterThan(0.5 * quantile(was, 0.99));
      expect(quantile(is, 0.99)).toBeLessThan(2.5 * quantile(was, 0.99));
    }
  });

  it("falls on few regions, as in the seed: the first two have a third to two thirds of all that name one", () => {
    for (const graph of [seed, made]) {
      const named = claimsOf(graph).flatMap((claim) =>
        "scope" in claim && claim.scope.region ? [claim.scope.region as string] : [],
      );
      const [first = 0, second = 0] = timesEach(named).toSorted((a, b) => b - a);
      expect((first + second) / named.length).toBeGreaterThan(0.33);
      expect((first + second) / named.length).toBeLessThan(0.67);
    }
  });

  it("is as much in a large graph as in a small one: a feature leads to as many terms", () => {
    expect(Math.abs(mean(reaches(made)) / mean(reaches(seed)) - 1)).toBeLessThan(0.4);
    const twice = graphOf(makeGraph({ claims: 49_060, claimsATerm: 4, seed: 2 }));
    expect(Math.abs(mean(reaches(twice)) / mean(reaches(large)) - 1)).toBeLessThan(0.25);
  });

  it("is no more of a hub in a graph of a million claims: as much is told of it, and no needs, though more need it", () => {
    const numberOf = (id: string): number => Number(id.slice(id.lastIndexOf("-") + 1));
    const told = [10_000, 1_000_000].map((claims) => {
      const world = worldOf(planGraph({ claims, claimsATerm: 4, seed: 1 }));
      const { first, end } = hubNumbers(world.plan);
      const families = Math.min(world.plan.families, 40);
      const ofHubs = Array.from({ length: families }, (_, family) => [...makeClaims(world, family)])
        .flat()
        .filter(
          (claim) => "subject" in claim && numberOf(claim.subject) >= first && numberOf(claim.subject) < end,
        );
      expect(ofHubs.filter(({ relation }) => relation === "requires")).toEqual([]);
      return (ofHubs.length * world.plan.families) / families / (end - first);
    });
    expect(Math.abs((told[1] as number) / (told[0] as number) - 1)).toBeLessThan(0.35);
  });
});
