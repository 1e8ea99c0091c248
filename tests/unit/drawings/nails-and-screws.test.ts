import { describe, expect, it } from "vitest";
import { pathPoints } from "#tests/support/path-points.ts";
import { CUT } from "#web/drawings/features/nails/cut-nails.ts";
import { NAIL, roseHead, shank } from "#web/drawings/features/nails/nail-views.ts";
import { crests, halfAt, type Screw } from "#web/drawings/features/screws/screw.ts";
import { GIMLET, HAND_FILED, MACHINE_CUT, ROLLED } from "#web/drawings/features/screws/slotted-screws.ts";

const gaps = (screw: Screw): number[] => {
  const at = crests(screw);
  return at.slice(1).map((y, i) => y - (at[i] as number));
};

describe("threads", () => {
  it("of a machine keep their pitch, filed ones wander", () => {
    for (const screw of [MACHINE_CUT, GIMLET, ROLLED])
      for (const gap of gaps(screw)) expect(gap).toBeCloseTo(screw.pitch, 9);
    const filed = gaps(HAND_FILED);
    expect(Math.max(...filed) - Math.min(...filed)).toBeGreaterThan(0.2 * HAND_FILED.pitch);
  });

  it("have a turn for each pitch between the shank and the end", () => {
    const { foot, threadFrom, pitch } = MACHINE_CUT;
    expect(crests(MACHINE_CUT)).toHaveLength(Math.ceil((foot - threadFrom) / pitch));
  });

  it("that are cut never stand wider than the shank; rolled ones do", () => {
    for (const screw of [HAND_FILED, MACHINE_CUT])
      for (const y of crests(screw)) expect(halfAt(screw, y)).toBeLessThanOrEqual(screw.shank.top);
    expect(halfAt(ROLLED, ROLLED.threadFrom)).toBeGreaterThan(ROLLED.shank.top);
  });

  it("run out to a point on a gimlet screw and keep their width on a blunt one", () => {
    expect(halfAt(GIMLET, GIMLET.foot)).toBeLessThan(2);
    expect(halfAt(MACHINE_CUT, MACHINE_CUT.foot)).toBe(MACHINE_CUT.crest.foot);
    const widths = [0.6, 0.7, 0.8, 0.9].map((t) =>
      halfAt(GIMLET, GIMLET.threadFrom + t * (GIMLET.foot - GIMLET.threadFrom)),
    );
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
  });
});

describe("nails", () => {
  it("that are cut taper on two sides and stay parallel on the other two", () => {
    expect(CUT.wide.tip).toBeLessThan(CUT.wide.under);
    expect(CUT.flat.tip).toBe(CUT.flat.under);
  });

  it("have a shank from the head to the tip, centred on its axis", () => {
    const points = pathPoints(shank(NAIL.front, { under: 12, tip: 2 }));
    expect(points.map(([, y]) => y)).toEqual([NAIL.head, NAIL.head, NAIL.tip, NAIL.tip]);
    expect(points.reduce((sum, [x]) => sum + x, 0) / points.length).toBe(NAIL.front);
  });

  it("beaten by hand have a few facets, no two heads alike", () => {
    const [first, second] = [roseHead(100, 100, 20), roseHead(100, 100, 20, 40)];
    const reaches = pathPoints(first.outline).map(([x, y]) => Math.hypot(x - 100, y - 100).toFixed(0));
    expect(reaches.length).toBeGreaterThanOrEqual(3);
    expect(reaches.length).toBeLessThanOrEqual(5);
    expect(new Set(reaches).size).toBeGreaterThan(2);
    expect(first.outline).not.toBe(second.outline);
  });
});
