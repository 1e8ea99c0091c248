import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { signFactors } from "#server/reasoning/dates/sign-factors.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const sign = (id: string, subject: string, more: Partial<ClaimSketch> = {}): ClaimSketch => ({
  ...{ id, relation: "indicates", subject, states: ["later"], strength: "firm" },
  ...more,
});
const GRID = { from: 1500, to: 2026 };
const readBoth = (
  claims: readonly ClaimSketch[],
  observations: readonly ObservationSketch[],
  region?: string,
) => {
  const { checks, graph } = subjectOf(claims, { observations, ...(region ? { region } : {}) });
  return signFactors(checks, graph, ASSUMED_ODDS, GRID);
};
const read = (...asked: Parameters<typeof readBoth>) => readBoth(...asked).signs;
const seen = (id: string, feature: string, more: Partial<ObservationSketch> = {}): ObservationSketch => ({
  ...{ id, feature, part: "back" },
  ...more,
});
const { misread, baseRate, detect, signs } = ASSUMED_ODDS;
const reported = (p: number) => (1 - misread.sure) * p + misread.sure * baseRate;

describe("[B7] signs of the state of a part", () => {
  it("are as probable as their strength says in the states they speak for, and in the others", () => {
    const [one] = read([sign("a", "bright")], [seen("o", "bright")]);
    expect(one?.byState.later).toBeCloseTo(reported(signs.firm[0]), 12);
    for (const state of ["original", "reused", "reworked"] as const)
      expect(one?.byState[state]).toBeCloseTo(reported(signs.firm[1]), 12);
  });

  it("speak the other way where they were looked for and are absent", () => {
    const [one] = read([sign("a", "bright")], [seen("o", "bright", { seen: "absent" })]);
    expect(one?.byState.later).toBeCloseTo(1 - detect * reported(signs.firm[0]), 12);
    expect(one?.byState.original).toBeGreaterThan(one?.byState.later as number);
  });

  it("that could not be seen, or were not looked for, say nothing", () => {
    expect(read([sign("a", "bright")], [seen("o", "bright", { seen: "unseen" })])).toEqual([]);
    expect(read([sign("a", "bright")], [seen("o", "other")])).toEqual([]);
  });

  it("of one cause count once: what was seen before what is absent, then the strongest", () => {
    const claims = [
      sign("a", "bright", { cause: "renewal", strength: "tentative" }),
      sign("b", "clean", { cause: "renewal", strength: "usual" }),
      sign("c", "sharp", { cause: "renewal", strength: "certain" }),
    ];
    const all = [seen("o1", "bright"), seen("o2", "clean"), seen("o3", "sharp", { seen: "absent" })];
    const found = read(claims, all);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ observations: ["o1", "o2", "o3"], linkedBy: "cause" });
    expect(found[0]?.byState.later).toBeCloseTo(reported(signs.usual[0]), 12);
  });

  it("of causes of their own count each", () => {
    expect(
      read([sign("a", "bright"), sign("b", "clean")], [seen("o1", "bright"), seen("o2", "clean")]),
    ).toHaveLength(2);
  });

  it("that an exception sets aside say nothing", () => {
    const claims = [
      sign("a", "bright"),
      { id: "x", relation: "void when", of: "a", condition: "cleaned" } as const,
    ];
    expect(read(claims, [seen("o1", "bright"), seen("o2", "cleaned")])).toEqual([]);
    expect(read(claims, [seen("o1", "bright"), seen("o2", "cleaned", { seen: "absent" })])).toHaveLength(1);
    expect(read(claims, [seen("o1", "bright"), seen("o2", "cleaned", { part: "side" })])).toHaveLength(1);
  });

  it("of another region say nothing", () => {
    expect(read([sign("a", "bright", { region: "south" })], [seen("o", "bright")], "farm")).toEqual([]);
    expect(read([sign("a", "bright", { region: "north" })], [seen("o", "bright")], "farm")).toHaveLength(1);
  });
});

describe("[B7] signs of age", () => {
  const dark = sign("a", "dark", { states: ["original", "reused", "reworked"], strength: "usual" });
  const [old, young] = signs.usual;
  const odds = (seenAs: Partial<ObservationSketch> = {}) =>
    readBoth([dark], [seen("o", "dark", seenAs)]).aged[0]?.byYear ?? new Float64Array();

  it("speak of no state, and grow likely with the age of the part", () => {
    expect(read([dark], [seen("o", "dark")])).toEqual([]);
    const byYear = odds();
    expect(byYear[GRID.to - GRID.from]).toBeCloseTo(reported(young), 12);
    expect(byYear[GRID.to - GRID.from - 50]).toBeCloseTo(reported((old + young) / 2), 12);
    for (const age of [100, 200, 500])
      expect(byYear[GRID.to - GRID.from - age]).toBeCloseTo(reported(old), 12);
  });

  it("speak of a young part where they were looked for and are absent", () => {
    const byYear = odds({ seen: "absent" });
    expect(byYear[0]).toBeCloseTo(1 - detect * reported(old), 12);
    expect(byYear[GRID.to - GRID.from]).toBeCloseTo(1 - detect * reported(young), 12);
  });

  it("of one cause with a sign of the state count once, the strongest", () => {
    const claims = [{ ...dark, cause: "air" }, sign("b", "bright", { cause: "air", strength: "certain" })];
    const found = readBoth(claims, [seen("o1", "dark"), seen("o2", "bright")]);
    expect(found.aged).toEqual([]);
    expect(found.signs).toHaveLength(1);
  });
});
