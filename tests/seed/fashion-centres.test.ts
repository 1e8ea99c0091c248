import { describe, expect, it } from "vitest";
import { regionsOfCentres } from "#server/domain/fashion-centre.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed } from "./seed-graph.ts";

describe("centres of fashion", () => {
  it("[R5] and the regions that follow them are regions of the seed", () => {
    const regions = new Set(
      parseSeed(readSeedLines())
        .terms.filter(({ kind }) => kind === "region")
        .map(({ id }) => id),
    );
    expect(regions.size).toBeGreaterThan(100);
    expect(regionsOfCentres().filter((region) => !regions.has(region))).toEqual([]);
  });
});
