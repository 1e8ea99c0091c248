import { beforeAll, describe, expect, it } from "vitest";
import type { Dated } from "#server/domain/claim.ts";
import { findAllDisagreements } from "#server/reasoning/disagreements/find-all.ts";
import type { RuleId } from "#server/reasoning/disagreements/rule.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed, type SeedGraph, withClaim } from "./seed-graph.ts";

const seed = parseSeed(readSeedLines());
const findIn = ({ terms, claims }: SeedGraph) => findAllDisagreements(terms, claims);
let found: ReturnType<typeof findAllDisagreements>;
let took: number;
beforeAll(() => {
  const start = performance.now();
  found = findIn(seed);
  took = performance.now() - start;
});

/** Rows of the fact register behind each finding of a rule. */
function rowsFoundBy(rule: RuleId): readonly (readonly string[])[] {
  const rowOf = new Map(seed.claims.map(({ id, row }) => [id, row ?? id]));
  return (found.get(rule) ?? []).map(({ claims }) => claims.map((claim) => rowOf.get(claim) ?? claim));
}

const moved = (id: string, when: string) =>
  findIn(withClaim(seed, id, (claim) => ({ ...(claim as Dated), when })));

describe("what the rules find in the seed", () => {
  it.each([
    ["the veneer frame saw, 1799 or 1805", ["A96", "A97"]],
    ["the pointed screw", ["B43", "B48"]],
    ["the pin-and-cove joint", ["C39", "C40", "C41"]],
    ["shellac as the finish of factories", ["F45", "F9"]],
  ])("[Q5] has the quarrel over %s", (_, rows) => {
    expect(rowsFoundBy("rivals")).toContainEqual(rows);
  });

  it("[Q5] has two spans or two years in each quarrel, never a record", () => {
    const relations = (found.get("rivals") ?? []).map(({ relation }) => relation);
    expect(relations.length).toBeGreaterThanOrEqual(8);
    expect(relations).not.toContain("attested");
  });

  it("[Q7] has regions that nobody but one source speaks of, and not those that many do", () => {
    const regions = (found.get("one-source") ?? []).map(({ term }) => term as string);
    expect(regions.length).toBeGreaterThanOrEqual(20);
    expect(regions).not.toContain("region.britain");
    expect(regions).not.toContain("region.united-states");
  });

  it("[Q2] would have a record that a careless date put before the introduction", () => {
    const rule = "attested-before-introduced";
    const isNew = ({ id }: { id: string }) => id === `${rule}:claim.C38:claim.C37`;
    expect((found.get(rule) ?? []).some(isNew)).toBe(false);
    expect(moved("claim.C37", "1875").get(rule)?.find(isNew)).toMatchObject({ years: 4 });
  });

  it("[Q3] would have a use that a careless date put before the introduction", () => {
    const rule = "common-before-introduced";
    const isNew = ({ id }: { id: string }) => id === `${rule}:claim.E78:claim.E77`;
    expect((found.get(rule) ?? []).some(isNew)).toBe(false);
    expect(moved("claim.E78", "1900").get(rule)?.find(isNew)).toMatchObject({ years: 26 });
  });

  it("takes well under a second", () => {
    expect(took).toBeLessThan(1000);
  });
});
