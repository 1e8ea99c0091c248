import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Dated, NotFoundIn } from "#server/domain/claim.ts";
import { yearsToJson } from "#server/domain/years.ts";
import { yearsOfClaim } from "#server/reasoning/claim-years.ts";
import { aClaim } from "#tests/support/build-claim.ts";

const read = (relation: Dated["relation"] | "not found in", when?: string, assumptions = ASSUMED) =>
  yearsOfClaim(
    aClaim({ id: "c", relation, subject: "F", ...(when === undefined ? {} : { when }) }) as
      | Dated
      | NotFoundIn,
    assumptions,
  );

describe("the years a claim allows", () => {
  it.each([
    ["introduced", "1750", [[1750, null]], [[1750, null]]],
    ["introduced", "1750/1760", [[1750, null]], [[1760, null]]],
    ["introduced", "1750~", [[1745, null]], [[1755, null]]],
    ["introduced", "17XX~", [[1675, null]], [[1824, null]]],
    ["introduced", "{1750,1760}", [[1750, null]], [[1750, null]]],
    ["introduced", "[..1750]", [[null, null]], [[1750, null]]],
    ["introduced", "[1750..]", [[1750, null]], []],
    ["common from", "1750/1760", [[1750, null]], [[1760, null]]],
    ["discontinued", "1740/1745", [[null, 1745]], [[null, 1740]]],
    ["discontinued", "{1750,1760}", [[null, 1760]], [[null, 1760]]],
    ["common until", "1750~", [[null, 1755]], [[null, 1745]]],
    ["current", "175X/176X", [[1750, 1769]], [[1759, 1760]]],
    ["current", "1750/..", [[1750, null]], [[1750, null]]],
    ["current", "../1750", [[null, 1750]], [[null, 1750]]],
    ["current", "1750/", [[1750, null]], [[1750, 1750]]],
    ["active", "1750~/1754~", [[1745, 1759]], []],
    ["attested", "1750", [[null, null]], [[null, null]]],
    [
      "not found in",
      "1714/1820",
      [
        [null, 1713],
        [1821, null],
      ],
      [
        [null, 1713],
        [1821, null],
      ],
    ],
    [
      "not found in",
      "171X/182X",
      [
        [null, 1718],
        [1821, null],
      ],
      [
        [null, 1709],
        [1830, null],
      ],
    ],
    [
      "not found in",
      "1750~/1754~",
      [[null, null]],
      [
        [null, 1744],
        [1760, null],
      ],
    ],
  ] as const)("[E3] %s %s", (relation, when, outer, inner) => {
    const years = read(relation, when);
    expect(yearsToJson(years.outer)).toEqual(outer);
    expect(yearsToJson(years.inner)).toEqual(inner);
  });

  it("[E12] are none for what is not found there at all", () => {
    const { outer, inner } = read("not found in");
    expect([outer, inner]).toEqual([[], []]);
  });

  it("[E2] widen by the pads of the examination", () => {
    const assumptions = { ...ASSUMED, padYear: 10, padCentury: 40 };
    expect(read("introduced", "1750~", assumptions).outer[0]?.[0]).toBe(1740);
    expect(read("introduced", "17XX~", assumptions).outer[0]?.[0]).toBe(1660);
  });

  it("[E2] are marked doubtful by a question mark in the year", () => {
    expect(read("introduced", "1750?").doubtful).toBe(true);
    expect(read("introduced", "1750").doubtful).toBe(false);
  });

  it("[E3] know an end that nobody states from one that is open", () => {
    expect(read("current", "1750/").endUnknown).toBe(true);
    expect(read("current", "1750/..").endUnknown).toBe(false);
  });
});
