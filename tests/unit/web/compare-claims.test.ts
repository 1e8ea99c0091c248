import { describe, expect, it } from "vitest";
import { compareClaims } from "#web/evidence/compare-claims.ts";
import type { Relation } from "#web/shared/apollo/schema-types.graphql.ts";

const place = (id: string) => ({ id, label: id });
const claimed = (
  begin: number | null,
  end: number | null,
  rest: object = {},
  relation: Relation = "INTRODUCED",
) => ({
  relation,
  years: { begin: [begin, end], end: [begin, end], padBegin: 0, padEnd: 0, doubtful: false },
  region: place("region.england"),
  form: null,
  part: null,
  ...rest,
});

describe("[P13] two claims of one subject and relation", () => {
  it("agree where one year fits both", () => {
    expect(compareClaims(claimed(1810, 1820), claimed(1820, 1830))).toEqual({ kind: "agree" });
  });

  it("disagree by the years between the nearest that each can mean", () => {
    expect(compareClaims(claimed(1777, 1777), claimed(1810, 1820))).toEqual({ kind: "disagree", years: 33 });
    expect(compareClaims(claimed(1810, 1820), claimed(1777, 1777))).toEqual({ kind: "disagree", years: 33 });
  });

  it("take the pads of their dates into account", () => {
    const about = { begin: [1790, 1790], end: [1790, 1790], padBegin: 5, padEnd: 5, doubtful: false };
    expect(compareClaims(claimed(1795, 1795), claimed(0, 0, { years: about }))).toEqual({ kind: "agree" });
    expect(compareClaims(claimed(1800, 1800), claimed(0, 0, { years: about }))).toEqual({
      kind: "disagree",
      years: 5,
    });
  });

  it("do not meet in another region, form or part", () => {
    expect(
      compareClaims(claimed(1777, 1777), claimed(1810, 1820, { region: place("region.ireland") })),
    ).toEqual({
      kind: "elsewhere",
    });
    expect(compareClaims(claimed(1777, 1777), claimed(1777, 1777, { part: place("part.back") }))).toEqual({
      kind: "elsewhere",
    });
    expect(compareClaims(claimed(1777, 1777), claimed(1777, 1777, { region: null }))).toEqual({
      kind: "elsewhere",
    });
  });

  it("agree where neither has a date to differ by", () => {
    const undated = claimed(null, null, { years: null }, "REQUIRES");
    expect(compareClaims(undated, undated)).toEqual({ kind: "agree" });
  });
});
