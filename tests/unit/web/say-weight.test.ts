import { describe, expect, it } from "vitest";
import { sayWeight } from "#web/evidence/say-weight.ts";

describe("what follows for a piece that goes against a claim", () => {
  it("is never impossible by habit", () => {
    for (const relation of ["CURRENT", "INTRODUCED", "CONFINED_TO", "NOT_FOUND_IN"] as const)
      expect(sayWeight(relation, "PRACTICE", null)).toMatch(/unusual, never impossible/);
  });

  it("speaks of years only where the claim leaves years", () => {
    expect(sayWeight("INTRODUCED", "PHYSICAL", null)).toMatch(/outside these years/);
    expect(sayWeight("CONFINED_TO", "PHYSICAL", null)).toMatch(/other region/);
    expect(sayWeight("CONFINED_TO", "PHYSICAL", null)).not.toMatch(/years/);
    expect(sayWeight("NOT_FOUND_IN", "PHYSICAL", null)).not.toMatch(/outside these years/);
  });

  it("is nothing for a record and for an open list", () => {
    expect(sayWeight("ATTESTED", "PHYSICAL", null)).toMatch(/bounds nothing/);
    expect(sayWeight("REQUIRES", "PHYSICAL", false)).toMatch(/bounds nothing/);
    expect(sayWeight("REQUIRES", "PHYSICAL", true)).toMatch(/older than what it was made with/);
  });
});
