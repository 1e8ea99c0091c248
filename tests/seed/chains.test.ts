import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
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

/** Features from which a walk over accepted `requires` claims meets a dated term after two or more steps. */
function featuresDatedFromAfar({ terms, claims }: SeedGraph): readonly string[] {
  const accepted = claims.filter(({ status }) => status === "accepted");
  const dated = new Set(accepted.flatMap((claim) => (DATING.has(claim.relation) ? [subjectOf(claim)] : [])));
  const needs = Map.groupBy(
    accepted.filter((claim) => claim.relation === "requires"),
    subjectOf,
  );
  const nextOf = (term: string): readonly string[] =>
    (needs.get(term) ?? []).flatMap((claim) => ("ways" in claim ? claim.ways.flat() : []));
  const reaches = (term: string, steps: number, seen: ReadonlySet<string>): boolean =>
    (steps >= 2 && dated.has(term)) ||
    nextOf(term).some((next) => !seen.has(next) && reaches(next, steps + 1, new Set([...seen, next])));
  return terms
    .filter(({ id, kind }) => kind === "feature" && reaches(id, 0, new Set([id])))
    .map(({ id }) => id)
    .sort();
}

const subjectOf = (claim: Claim): string => ("subject" in claim ? claim.subject : "");

describe("the chains of the seed", () => {
  it("lead at least thirty features to a date over two or more steps", () => {
    const features = featuresDatedFromAfar(seed);
    expect(features.length).toBeGreaterThanOrEqual(30);
    expect(features).toContain("feature.cut-nail-stamped-head");
    expect(features).toContain("feature.rounded-dovetail-sockets");
    expect(features).not.toContain("feature.planer-scallops");
  });

  it("are counted by their links: without the links there are none", () => {
    const claims = seed.claims.filter(({ relation }) => relation !== "requires");
    expect(featuresDatedFromAfar({ ...seed, claims })).toEqual([]);
  });
});

describe("the size of the seed", () => {
  const accepted = seed.claims.filter(({ status }) => status === "accepted");
  const onBasis = (basis: string): number =>
    accepted.filter(({ citations }) => citations.some((citation) => citation.basis === basis)).length;

  it("is at least 250 accepted claims, of which at least 150 are published", () => {
    expect(accepted.length).toBeGreaterThanOrEqual(250);
    expect(onBasis("published")).toBeGreaterThanOrEqual(150);
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
