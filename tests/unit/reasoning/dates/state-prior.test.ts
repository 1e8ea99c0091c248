import { describe, expect, it } from "vitest";
import type { Part } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { broaderTerms } from "#server/domain/region.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { AssumedOdds } from "#server/domain/weighing/odds.ts";
import { statePrior } from "#server/reasoning/dates/state-prior.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";

const broader = broaderTerms(
  aTree("part", { "part.drawer": { "part.drawer-bottom": { "part.batten": {} } } }),
);
const part = (name: string, kind?: string): Part =>
  ({ id: id(`p${name}`), label: name, ...(kind ? { kind: id(kind) } : {}) }) as Part;
const odds: AssumedOdds = {
  ...ASSUMED_ODDS,
  states: [{ kind: id("part.drawer"), odds: { original: 0.8, later: 0.17, reused: 0.03 } }],
  otherwise: { original: 0.85, later: 0.12, reused: 0.03 },
  reworked: 0.05,
};
const original = (...parts: Part[]) => statePrior(parts, odds, broader).original / 0.95;

describe("[B1] the prior of the states of a part", () => {
  it("is that of its kind, of the nearest broader kind, or of any part", () => {
    expect(original(part("1", "part.drawer"))).toBeCloseTo(0.8, 12);
    expect(original(part("1", "part.batten"))).toBeCloseTo(0.8, 12);
    expect(original(part("1", "part.foot"))).toBeCloseTo(0.85, 12);
    expect(original(part("1"))).toBeCloseTo(0.85, 12);
  });

  it("is what the examiner chose for the part before all others", () => {
    const ofParts = [{ part: id<"part">("p1"), odds: { original: 0.1, later: 0.9, reused: 0 } }];
    const chosen = statePrior([part("1", "part.drawer")], { ...odds, ofParts }, broader);
    expect(chosen.later).toBeCloseTo(0.95 * 0.9, 12);
    expect(chosen.reused).toBe(0);
  });

  it("of parts that are together is that of the one most often original", () => {
    expect(original(part("1", "part.drawer"), part("2"))).toBeCloseTo(0.85, 12);
  });

  it("[B9] adds up, the share of reworked parts included", () => {
    const { later, reused, reworked, ...rest } = statePrior([part("1")], odds, broader);
    expect(rest.original + later + reused + reworked).toBeCloseTo(1, 12);
    expect(reworked).toBe(0.05);
  });
});
