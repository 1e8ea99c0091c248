import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import type { YearsJson } from "#server/domain/years.ts";
import { examine } from "#server/reasoning/examine.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type ObservationSketch } from "#tests/support/build-piece.ts";
import { CLAIMS, CLAIMS_WITH_LAG, REGIONS } from "./vector-graph.ts";

interface Vector {
  readonly feature: string;
  readonly region: string;
  readonly date: string;
  readonly outer: YearsJson;
  readonly inner: YearsJson;
  readonly label: string;
  readonly support?: string;
  readonly also?: readonly ObservationSketch[];
  readonly claims?: readonly Claim[];
}

const ALL: YearsJson = [[null, null]];
const since = (year: number): YearsJson => [[year, null]];
const GILDED = { id: "gilding", part: "top", feature: "gilded" };

/**
 * Each row: the years of a feature, the label of its finding, and what that rests on. A support is irredundant, so the two rows whose
 * chains visit more name less: M1's begin and T2 play no part in what excludes F2, nor does c13 in what excludes F5.
 */
const VECTORS: readonly Vector[] = [
  {
    ...{ feature: "F1", region: "London", date: "1760/1775", outer: since(1790), inner: since(1799) },
    ...{ label: "contradictory physical", support: "c1 c2" },
  },
  {
    ...{ feature: "F1", region: "Boston", date: "1760/1775", outer: since(1815), inner: since(1815) },
    ...{ label: "contradictory physical", support: "c1 c16" },
  },
  {
    ...{ feature: "F1", region: "Boston", date: "1810/1820", outer: since(1815), inner: since(1815) },
    label: "consistent possible",
  },
  {
    ...{ feature: "F1", region: "France", date: "1785", outer: since(1790), inner: since(1799) },
    ...{ label: "contradictory physical", support: "c1 c2 earliestAnywhere(T1)" },
  },
  {
    ...{ feature: "F2", region: "Boston", date: "1760/1775" },
    ...{ outer: [...[[1720, 1745] as const], ...since(1830)], inner: [[1730, 1740], ...since(1835)] },
    ...{ label: "contradictory practice", support: "c5 c8 c9" },
  },
  {
    ...{ feature: "F2", region: "Boston", date: "1735/1760" },
    ...{ outer: [[1720, 1745], ...since(1830)], inner: [[1730, 1740], ...since(1835)] },
    label: "consistent possible",
  },
  {
    ...{ feature: "F3", region: "Boston", date: "1810/1820", outer: [[null, 1800]], inner: [[null, 1790]] },
    ...{ label: "contradictory practice", support: "c10" },
  },
  {
    ...{ feature: "F3", region: "Boston", date: "1810/1820", also: [GILDED], outer: ALL, inner: ALL },
    label: "silent defeated",
  },
  {
    feature: "F3",
    region: "London",
    date: "1810/1820",
    outer: ALL,
    inner: ALL,
    label: "silent out-of-scope",
  },
  { feature: "F4", region: "Boston", date: "1760/1775", outer: ALL, inner: ALL, label: "silent undated" },
  {
    ...{ feature: "F5", region: "Boston", date: "1740/1745", outer: since(1750), inner: since(1750) },
    ...{ label: "contradictory physical", support: "c12 c14" },
  },
  { feature: "F7", region: "Boston", date: "1760/1775", outer: ALL, inner: ALL, label: "silent open-list" },
  {
    ...{ feature: "F1", region: "RuralNH", date: "1815/1821", claims: CLAIMS_WITH_LAG },
    ...{ outer: since(1822), inner: since(1834), label: "contradictory physical", support: "c1 c17 c4" },
  },
];

describe("the vectors of one feature against one claim", () => {
  it.each(VECTORS)("[E16][E17][E19] $feature in $region, $date: $label", (vector) => {
    const { feature, region, date, also = [], claims = CLAIMS } = vector;
    const observations = [{ id: "o", part: "top", feature }, ...also];
    const report = examine(aPiece({ date, region, observations }), neighbourhoodOf(REGIONS, claims));
    const finding = report.findings.find(({ id }) => id === "o");
    expect(finding?.usual).toEqual({ outer: vector.outer, inner: vector.inner });
    const detail = finding?.hardness ?? finding?.reason ?? (finding?.certain ? "certain" : "possible");
    expect(`${finding?.label} ${detail}`).toBe(vector.label);
    if (vector.support !== undefined) {
      const { claims: cited = [], assumptions = [] } = finding?.support ?? {};
      expect([...cited, ...assumptions].sort()).toEqual(vector.support.split(" ").sort());
    }
    expect(finding?.direction).toBe(
      finding?.label === "contradictory"
        ? vector.outer.length > 1
          ? "gap"
          : vector.outer[0]?.[0] === null
            ? "early"
            : "late"
        : undefined,
    );
  });

  it("[E18] measures the distance between the nearest years", () => {
    const gap = (feature: string, region: string, date: string): number | undefined =>
      examine(
        aPiece({ date, region, observations: [{ id: "o", part: "top", feature }] }),
        neighbourhoodOf(REGIONS, CLAIMS),
      ).findings[0]?.gapYears;
    expect(gap("F1", "London", "1760/1775")).toBe(15);
    expect(gap("F2", "Boston", "1760/1775")).toBe(15);
    expect(gap("F3", "Boston", "1810/1820")).toBe(10);
  });
});
