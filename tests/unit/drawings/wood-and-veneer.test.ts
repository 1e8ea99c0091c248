import { describe, expect, it } from "vitest";
import { pathPoints } from "#tests/support/path-points.ts";
import { cutterRidges, RIDGES } from "#web/drawings/features/carving/carving.ts";
import { LEATHER_DISCS, leatherCastorWheel } from "#web/drawings/features/castors/castors.ts";
import type { Drawing, Mark } from "#web/drawings/features/mark.ts";
import {
  PER_MM,
  thicknessAt,
  thickUnevenVeneer,
  veneerUnderOneMm,
} from "#web/drawings/features/veneer/leaves.ts";
import { SCRAPED, veneerScrapedThin } from "#web/drawings/features/veneer/scraped.ts";
import { LOST, ovalTop } from "#web/drawings/features/wear/shrinkage.ts";

type Span = Extract<Mark, { kind: "span" }>;
const spans = (drawing: Drawing): Span[] =>
  drawing.draw("full").filter((mark): mark is Span => mark.kind === "span");
const lengthOf = ({ from, to }: Span): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

describe("veneer", () => {
  it("is drawn to one scale, thick and thin, with the bar beside it", () => {
    for (const drawing of [thickUnevenVeneer, veneerUnderOneMm, veneerScrapedThin]) {
      const scale = drawing.draw("full").find((mark) => mark.kind === "scale");
      expect(scale?.kind === "scale" ? scale.unitsPerMm : undefined, drawing.title).toBe(PER_MM);
    }
  });

  it("that is thick measures over 2 mm wherever it is measured, and not the same", () => {
    const measured = spans(thickUnevenVeneer).map((each) => lengthOf(each) / PER_MM);
    expect(measured.length).toBeGreaterThan(1);
    for (const mm of measured) expect(mm).toBeGreaterThan(2);
    expect(Math.max(...measured) - Math.min(...measured)).toBeGreaterThan(0.2);
    expect(measured[0]).toBeCloseTo(thicknessAt(2.6, 0.5, 1), 9);
  });

  it("that is thin measures under 1 mm; scraped at an edge it is thin there alone", () => {
    for (const each of spans(veneerUnderOneMm)) expect(lengthOf(each) / PER_MM).toBeLessThan(1);
    expect(SCRAPED.edge).toBeLessThan(0.7);
    expect(SCRAPED.middle).toBeGreaterThan(1);
    expect(lengthOf(spans(veneerScrapedThin)[0] as Span) / PER_MM).toBeCloseTo(SCRAPED.middle, 9);
  });
});

describe("a round top that has shrunk", () => {
  it("is narrower across the grain by the share it has lost", () => {
    const [along, across] = spans(ovalTop).map(lengthOf) as [number, number];
    expect(across).toBeCloseTo(along * (1 - LOST), 9);
  });
});

describe("things told by a count or a pitch", () => {
  it("a leather wheel shows a line between each two of its discs", () => {
    const joints = leatherCastorWheel
      .draw("full")
      .flatMap((mark) => (mark.kind === "line" && mark.weight === "edge" ? [pathPoints(mark.d)] : []))
      .filter((points) => points.length === 2 * (LEATHER_DISCS - 1));
    expect(joints).toHaveLength(1);
  });

  it("cutter ridges stand at one distance, and the measures beside them are as long", () => {
    for (const each of spans(cutterRidges)) expect(lengthOf(each)).toBe(RIDGES);
  });
});
