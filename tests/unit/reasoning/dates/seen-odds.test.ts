import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { curveIsRight } from "#server/reasoning/dates/right-odds.ts";
import { seenOdds } from "#server/reasoning/dates/seen-odds.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const CURVE = Float64Array.from([0.005, 0.5, 1, 0.095]);
const MEAN = 0.4;
const { misread, baseRate, detect, prevalence } = ASSUMED_ODDS;

const of = (seen: "present" | "absent" | "unseen", sureness: "sure" | "possible", right = 1) => [
  ...seenOdds(CURVE, right, { seen, sureness }, ASSUMED_ODDS),
];

describe("[B4] what was recorded", () => {
  it("as seen is there by its curve, or misread", () => {
    const m = misread.sure;
    expect(of("present", "sure")[2]).toBeCloseTo(prevalence * ((1 - m) * 1 + m * baseRate), 12);
    expect(of("present", "sure")[0]).toBeCloseTo(prevalence * ((1 - m) * 0.005 + m * baseRate), 12);
  });

  it("unsurely tells years less apart", () => {
    const ratio = ([low, , high]: readonly number[]) => (high as number) / (low as number);
    expect(ratio(of("present", "possible"))).toBeLessThan(ratio(of("present", "sure")));
  });

  it("as absent is not there, or missed; most parts of its time have none anyhow", () => {
    const m = misread.sure;
    const there = prevalence * ((1 - m) * 1 + m * baseRate);
    expect(of("absent", "sure")[2]).toBeCloseTo(1 - detect * there, 12);
    const [low, , high] = of("absent", "sure") as [number, number, number];
    expect(high).toBeLessThan(low);
    expect(low / high).toBeLessThan(1.4);
  });

  it("as not to be seen says nothing", () => {
    expect(of("unseen", "sure")).toEqual([1, 1, 1, 1]);
  });

  it("by claims that are surely wrong says no more than the mean of the curve", () => {
    const m = misread.sure;
    for (const value of of("present", "sure", 0))
      expect(value).toBeCloseTo(prevalence * ((1 - m) * MEAN + m * baseRate), 12);
  });
});

describe("[B4] claims that may be wrong", () => {
  const { graph } = subjectOf(
    [
      { id: "firm", relation: "introduced", subject: "F", when: "1700", strength: "firm" },
      { id: "doubted", relation: "introduced", subject: "G", when: "1700?", strength: "firm" },
    ],
    {},
  );
  const right = (claims: readonly string[], assumes = false, given = new Map()) =>
    curveIsRight({ claims: new Set(claims) as never, assumes }, graph, ASSUMED_ODDS, given);

  it("are right by their strength, less where the date is doubted, and all of them together", () => {
    expect(right(["firm"])).toBeCloseTo(0.99, 12);
    expect(right(["doubted"])).toBeCloseTo(0.99 * 0.7, 12);
    expect(right(["firm", "doubted"])).toBeCloseTo(0.99 * 0.99 * 0.7, 12);
    expect(right([], true)).toBeCloseTo(0.7, 12);
  });

  it("[B6] are taken as right or wrong where that is tried", () => {
    expect(right(["firm"], false, new Map([["firm", 0]]))).toBe(0);
    expect(right(["firm", "doubted"], false, new Map([["doubted", 1]]))).toBeCloseTo(0.99, 12);
  });
});
