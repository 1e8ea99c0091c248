import { describe, expect, it } from "vitest";
import { HEIGHT } from "#web/drawings/features/joints/corner.ts";
import { EQUAL, LAPPED_LENGTH } from "#web/drawings/features/joints/dovetails.ts";
import { COVE, pinAndCoveCorner } from "#web/drawings/features/joints/other-corners.ts";
import { type Layout, setOut } from "#web/drawings/features/joints/tails.ts";
import { NECK_MM, narrowNeckedDovetail, SHANK_MM } from "#web/drawings/features/joints/taken-apart.ts";

const layout: Layout = { tails: 4, pin: 6, slope: 1 / 6, halfPin: 5 };

describe("a row of dovetails", () => {
  it("fills the height with tails, pins and two half pins", () => {
    const tails = setOut(layout, 120, 30);
    expect(tails).toHaveLength(4);
    const widths = tails.map(({ end: [top, foot] }) => foot - top);
    expect(widths.reduce((sum, width) => sum + width, 0) + 3 * 6 + 2 * 5).toBeCloseTo(120, 9);
    expect(tails[0]?.end[0]).toBe(5);
    expect(tails[3]?.end[1]).toBeCloseTo(115, 9);
    for (const [i, tail] of tails.slice(1).entries())
      expect(tail.end[0] - (tails[i]?.end[1] ?? 0)).toBeCloseTo(6, 9);
  });

  it("widens towards the end of the board by the slope asked for, on both flanks", () => {
    for (const { end, base } of setOut(layout, 120, 30)) {
      expect(base[0] - end[0]).toBeCloseTo(5, 9);
      expect(end[1] - base[1]).toBeCloseTo(5, 9);
    }
  });

  it("differs from tail to tail by hand and not by machine", () => {
    const widths = (unevenness: number) =>
      new Set(setOut({ ...layout, unevenness }, 120, 30).map(({ end }) => (end[1] - end[0]).toFixed(6)));
    expect(widths(0).size).toBe(1);
    expect(widths(1.5).size).toBe(4);
  });

  it("of a machine has pins as wide at their narrow end as its tails are at theirs", () => {
    const tails = setOut(EQUAL, HEIGHT, LAPPED_LENGTH);
    for (const { base } of tails) expect(base[1] - base[0]).toBeCloseTo(EQUAL.pin, 9);
  });
});

describe("joints told by a measure", () => {
  it("pin and cove: scallops of one radius in even steps that do not run into each other", () => {
    const outline = pinAndCoveCorner
      .draw("full")
      .flatMap((mark) => (mark.kind === "body" && mark.d.includes("A14") ? [mark.d] : []))
      .join("");
    expect(outline.match(/A14 14/g)).toHaveLength(4);
    expect(2 * COVE.radius).toBeLessThan(COVE.pitch);
    expect(COVE.peg).toBeLessThan(COVE.radius);
  });

  it("narrow neck: under 3 mm and narrower than the shank, at the scale of the bar", () => {
    expect(NECK_MM).toBeLessThan(3);
    expect(SHANK_MM).toBeGreaterThan(NECK_MM);
    const marks = narrowNeckedDovetail.draw("full");
    const scale = marks.find((mark) => mark.kind === "scale");
    const neck = marks.find((mark) => mark.kind === "span");
    if (scale?.kind !== "scale" || neck?.kind !== "span") throw new Error("no scale bar or no measure");
    expect((neck.to[0] - neck.from[0]) / scale.unitsPerMm).toBeCloseTo(NECK_MM, 9);
  });
});
