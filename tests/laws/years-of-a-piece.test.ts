import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import type { Observation, Piece } from "#server/domain/examination.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { Finding } from "#server/domain/report.ts";
import { hasYear, yearsFromJson } from "#server/domain/years.ts";
import { examine } from "#server/reasoning/examine.ts";
import { GRID, type SlowContext, slowYears, upFrom } from "#tests/oracles/slow-years.ts";
import { anyClaims, anyPiece, WORLD, wholeWorld } from "#tests/support/any-graph.ts";

const terms = new Map(WORLD.map((term) => [term.id, term]));
const regions = WORLD.filter((term) => term.kind === "region").map((term) => term.id);

/** Every region at or below the claimed one, each standing for itself and for "elsewhere in it". */
const placesOf = (piece: Piece): TermId[] =>
  regions.filter(
    (region) =>
      piece.attribution.region === undefined || upFrom(region, terms).includes(piece.attribution.region),
  );

function slowSet(
  claims: readonly Claim[],
  piece: Piece,
  observation: Observation,
  reading: SlowContext["reading"],
  hardness: SlowContext["hardness"],
): boolean[] {
  const part = piece.parts.find((candidate) => candidate.id === observation.part)?.kind;
  const sets = placesOf(piece).map((region) => {
    const years = slowYears({
      claims,
      terms,
      region,
      form: piece.attribution.form,
      part,
      reading,
      hardness,
      withFallback: true,
    });
    return years.get(observation.feature) ?? [];
  });
  return GRID.map((_, i) => (reading === "outer" ? sets.some((set) => set[i]) : sets.every((set) => set[i])));
}

const onGrid = (years: Finding["possible"]["outer"]): boolean[] =>
  GRID.map((year) => hasYear(yearsFromJson(years), year));

describe("the years of a finding, against trying every year", () => {
  it("[E2][E3][E4][E5][E6][E7][E8][E9][E11][E12][E14] are those that no claim forbids", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const report = examine(piece, wholeWorld(claims));
        for (const observation of piece.observations) {
          const finding = report.findings.find((candidate) => candidate.observation === observation.id);
          if (finding === undefined) throw new Error(`no finding for ${observation.id}`);
          expect(onGrid(finding.possible.outer)).toEqual(
            slowSet(claims, piece, observation, "outer", "physical"),
          );
          expect(onGrid(finding.usual.outer)).toEqual(
            slowSet(claims, piece, observation, "outer", "practice"),
          );
          expect(onGrid(finding.possible.inner)).toEqual(
            slowSet(claims, piece, observation, "inner", "physical"),
          );
          expect(onGrid(finding.usual.inner)).toEqual(
            slowSet(claims, piece, observation, "inner", "practice"),
          );
        }
      }),
      { numRuns: 250 },
    );
  });
});
