import { describe, expect, it } from "vitest";
import { compareClaims } from "#web/evidence/compare-claims.ts";
import type { Relation } from "#web/shared/apollo/schema-types.graphql.ts";

type Ends = readonly [number | null, number | null];
const place = (id: string) => ({ id, label: id });

const claimed = (relation: Relation, begin: Ends, end: Ends = begin, pad = 0) => ({
  relation,
  years: { begin, end, padBegin: pad, padEnd: pad, doubtful: false },
  region: place("region.england"),
  form: null,
  part: null,
});
const introduced = (first: number, last = first, pad = 0) =>
  claimed("INTRODUCED", [first, last], [first, last], pad);

describe("[P13] two claims of one subject and relation", () => {
  it("agree where one year fits both", () => {
    expect(compareClaims(introduced(1810, 1820), introduced(1820, 1830))).toEqual({ kind: "agree" });
  });

  it("disagree by the years between the nearest that each can mean", () => {
    expect(compareClaims(introduced(1777), introduced(1810, 1820))).toEqual({ kind: "disagree", years: 33 });
    expect(compareClaims(introduced(1810, 1820), introduced(1777))).toEqual({ kind: "disagree", years: 33 });
  });

  it("take the pads of their dates into account", () => {
    expect(compareClaims(introduced(1795), introduced(1790, 1790, 5))).toEqual({ kind: "agree" });
    expect(compareClaims(introduced(1800), introduced(1790, 1790, 5))).toEqual({
      kind: "disagree",
      years: 5,
    });
  });

  it("differ on the end of a span of use that is farther off", () => {
    const span = claimed("CURRENT", [1780, 1780], [1850, 1850]);
    expect(compareClaims(span, claimed("CURRENT", [1785, 1785], [1800, 1800]))).toEqual({
      kind: "disagree",
      years: 50,
      on: "end",
    });
    expect(compareClaims(span, claimed("CURRENT", [1740, 1740], [null, null]))).toEqual({
      kind: "disagree",
      years: 40,
      on: "beginning",
    });
    expect(compareClaims(span, claimed("CURRENT", [1770, 1790], [1850, 1850]))).toEqual({ kind: "agree" });
  });

  it("do not disagree where both are records, or spans in which a thing is not found", () => {
    expect(compareClaims(claimed("ATTESTED", [1777, 1777]), claimed("ATTESTED", [1808, 1808]))).toEqual({
      kind: "agree",
    });
    expect(
      compareClaims(
        claimed("NOT_FOUND_IN", [null, null], [1700, 1700]),
        claimed("NOT_FOUND_IN", [1800, 1800], [1810, 1810]),
      ),
    ).toEqual({ kind: "agree" });
  });

  it("do not meet in another region, form or part", () => {
    const here = introduced(1777);
    expect(compareClaims(here, { ...introduced(1810), region: place("region.ireland") })).toEqual({
      kind: "elsewhere",
    });
    expect(compareClaims(here, { ...here, part: place("part.back") })).toEqual({ kind: "elsewhere" });
    expect(compareClaims(here, { ...here, region: null })).toEqual({ kind: "elsewhere" });
  });

  it("agree where there is no date to differ by", () => {
    const undated = { ...introduced(1777), relation: "REQUIRES" as const, years: null };
    expect(compareClaims(undated, undated)).toEqual({ kind: "agree" });
  });
});
