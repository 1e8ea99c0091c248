import { describe, expect, it } from "vitest";
import type { Claim, Requires } from "#server/domain/claim.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed, type SeedGraph } from "./seed-graph.ts";

const seed = parseSeed(readSeedLines());

/** Relations whose claims put a year to their subject. */
const DATING = new Set<string>([
  "introduced",
  "attested",
  "common from",
  "common until",
  "discontinued",
  "current",
  "active",
]);

/**
 * Features from which a walk over accepted `requires` claims meets, after `least` steps or more, a term that a claim
 * puts a year to. A step goes from a subject to any term of any of its ways, in closed lists and open ones; no term is
 * met twice on one walk. What is counted is evidence that can be shown, not a bound: an open list bounds nothing.
 */
function featuresDatedFromAfar({ terms, claims }: SeedGraph, least: number): readonly string[] {
  const accepted = claims.filter(({ status }) => status === "accepted");
  const dated = new Set(accepted.flatMap((claim) => (DATING.has(claim.relation) ? [subjectOf(claim)] : [])));
  const needs = Map.groupBy(
    accepted.filter((claim) => claim.relation === "requires"),
    subjectOf,
  );
  const nextOf = (term: string): readonly string[] =>
    (needs.get(term) ?? []).flatMap((claim) => ("ways" in claim ? claim.ways.flat() : []));
  const reaches = (term: string, steps: number, seen: ReadonlySet<string>): boolean =>
    (steps >= least && dated.has(term)) ||
    nextOf(term).some((next) => !seen.has(next) && reaches(next, steps + 1, new Set([...seen, next])));
  return terms
    .filter(({ id, kind }) => kind === "feature" && reaches(id, 0, new Set([id])))
    .map(({ id }) => id)
    .sort();
}

const subjectOf = (claim: Claim): string => ("subject" in claim ? claim.subject : "");

describe("the chains of the seed", () => {
  it("lead at least 120 features to a date over two or more steps", () => {
    const features = featuresDatedFromAfar(seed, 2);
    expect(features.length).toBeGreaterThanOrEqual(120);
    expect(features).toContain("feature.cut-nail-stamped-head");
    expect(features).toContain("feature.rounded-dovetail-sockets");
    expect(features).not.toContain("feature.planer-scallops");
  });

  it("lead at least 40 features to a date over three or more steps", () => {
    const features = featuresDatedFromAfar(seed, 3);
    expect(features.length).toBeGreaterThanOrEqual(40);
    // glue in chips, the resin, its raw material
    expect(features).toContain("feature.chipboard");
    // the nail, its machine, drawn wire, the plate it is drawn through
    expect(features).toContain("feature.wire-nail");
    expect(features).not.toContain("feature.rounded-dovetail-sockets");
  });

  it("are counted by their links: without the links there are none", () => {
    const claims = seed.claims.filter(({ relation }) => relation !== "requires");
    expect(featuresDatedFromAfar({ ...seed, claims }, 2)).toEqual([]);
  });

  it("are counted by their dates: without a date at the end there are none", () => {
    const claims = seed.claims.filter(({ relation }) => !DATING.has(relation));
    expect(featuresDatedFromAfar({ ...seed, claims }, 2)).toEqual([]);
  });
});

describe("complete lists of ways", () => {
  const lists = seed.claims.filter(
    (claim): claim is Requires => claim.relation === "requires" && claim.closed,
  );

  it("say why they are complete, every one, also where the thing seen is the thing needed", () => {
    expect(lists.length).toBeGreaterThan(0);
    expect(lists.filter(({ note = "" }) => note.length < 10).map(({ id }) => id)).toEqual([]);
  });

  it("are short: seldom more than one way, and never more than three", () => {
    expect(lists.filter(({ ways }) => ways.length > 3).map(({ id }) => id)).toEqual([]);
    const several = lists.filter(({ ways }) => ways.length > 1);
    expect(several.length).toBeLessThan(lists.length / 10);
  });
});

describe("the size of the seed", () => {
  const accepted = seed.claims.filter(({ status }) => status === "accepted");
  const onBasis = (basis: string): number =>
    accepted.filter(({ citations }) => citations.some((citation) => citation.basis === basis)).length;

  it("is at least 2,200 accepted claims, of which at least 1,000 are published", () => {
    expect(accepted.length).toBeGreaterThanOrEqual(2200);
    expect(onBasis("published")).toBeGreaterThanOrEqual(1000);
  });

  it("owns to common practice and to memory", () => {
    expect(onBasis("common practice")).toBeGreaterThan(0);
    expect(onBasis("from memory")).toBeGreaterThan(0);
  });

  it("uses every relation that the first part needs", () => {
    const relations = new Set(seed.claims.map(({ relation }) => relation));
    for (const relation of ["requires", "introduced", "attested", "common from", "common until", "current"])
      expect(relations).toContain(relation);
    for (const relation of ["typical of", "confined to", "indicates", "void when"])
      expect(relations).toContain(relation);
  });
});
