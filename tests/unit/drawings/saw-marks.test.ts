import { describe, expect, it } from "vitest";
import { pathPoints } from "#tests/support/path-points.ts";
import type { Drawing, Mark } from "#web/drawings/features/mark.ts";
import { planerScallops, SCALLOP } from "#web/drawings/features/planes/machined.ts";
import { arrises, hollows } from "#web/drawings/features/planes/surface.ts";
import {
  circularSawMark,
  DISC,
  discKerfs,
  largeCircularSawMark,
} from "#web/drawings/features/saws/round-kerfs.ts";
import {
  BAND_PITCH,
  BAYS,
  bandSawMark,
  KERFS_PER_TURN,
  kerfs,
  SASH_PITCH,
  sashSawMark,
} from "#web/drawings/features/saws/straight-kerfs.ts";

const lines = (drawing: Drawing, kind: Mark["kind"]): string[] =>
  drawing.draw("full").flatMap((mark) => (mark.kind === kind && "d" in mark ? [mark.d] : []));
const gaps = (values: readonly number[]): number[] =>
  values.slice(1).map((value, i) => value - (values[i] as number));
const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

describe("kerfs of a saw drawn by hand", () => {
  const slopes = BAYS.map(({ from, to, pitch, lean }, bay) =>
    kerfs(from, to, pitch, lean, 1.2, bay).map(({ top, foot }) => top - foot),
  );

  it("are straight and lean otherwise in each bay", () => {
    const means = slopes.map((bay) => bay.reduce((sum, lean) => sum + lean, 0) / bay.length);
    for (const gap of gaps(means)) expect(Math.abs(gap)).toBeGreaterThan(10);
  });

  it("are unevenly spaced", () => {
    const [bay] = BAYS;
    const feet = kerfs(bay.from, bay.to, bay.pitch, bay.lean, 1.2).map(({ foot }) => foot);
    expect(spread(gaps(feet))).toBeGreaterThan(0.1 * bay.pitch);
  });
});

describe("kerfs of a machine", () => {
  it("of a sash saw are upright, at one pitch", () => {
    const points = lines(sashSawMark, "line")
      .filter((d) => d.split("M").length > 15)
      .flatMap(pathPoints);
    const tops = points.filter((_, i) => i % 2 === 0);
    const feet = points.filter((_, i) => i % 2 === 1);
    expect(tops.length).toBeGreaterThan(15);
    expect(tops.map(([x]) => x)).toEqual(feet.map(([x]) => x));
    expect(new Set(gaps(tops.map(([x]) => x)))).toEqual(new Set([SASH_PITCH]));
  });

  it("of a circular saw all have the same radius", () => {
    const radii = [...discKerfs(DISC, 160, 9, 30, 8).matchAll(/A([\d.]+) ([\d.]+)/g)].map(([, rx, ry]) => [
      rx,
      ry,
    ]);
    expect(radii).toHaveLength(30);
    expect(new Set(radii.flat())).toEqual(new Set([String(DISC)]));
    const inDrawing =
      lines(circularSawMark, "line")
        .join("")
        .match(/A170 170/g) ?? [];
    expect(inDrawing.length).toBe(30);
  });

  it("of a log saw have 600 mm, by the scale bar beside them", () => {
    const scale = largeCircularSawMark.draw("full").find((mark) => mark.kind === "scale");
    const perMm = scale?.kind === "scale" ? scale.unitsPerMm : Number.NaN;
    const radius = Number(/A([\d.]+)/.exec(lines(largeCircularSawMark, "knife").join(""))?.[1]);
    expect(radius / perMm).toBe(600);
  });

  it("of a band saw come back deeper at a fixed distance", () => {
    const joints = lines(bandSawMark, "knife")
      .flatMap(pathPoints)
      .filter((_, i) => i % 2 === 0);
    for (const gap of gaps(joints.map(([x]) => x))) expect(gap).toBeCloseTo(BAND_PITCH * KERFS_PER_TURN, 1);
  });
});

describe("waves of a surface", () => {
  it("of a planer have one pitch, and the measures drawn beside them are one pitch long", () => {
    const measures = planerScallops
      .draw("full")
      .flatMap((mark) => (mark.kind === "span" ? [mark.to[0] - mark.from[0]] : []));
    expect(measures).toEqual([SCALLOP, SCALLOP]);
  });

  it("meet in arrises that stand where their widths put them", () => {
    expect(arrises(10, [20, 30, 25])).toEqual([10, 30, 60, 85]);
    const { start, steps } = hollows([10, 100], [20, 30], 6);
    expect(start).toEqual([10, 100]);
    expect(steps.map((step) => step.slice(-2))).toEqual([
      [30, 100],
      [60, 100],
    ]);
  });
});
