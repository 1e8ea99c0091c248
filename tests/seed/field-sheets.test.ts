import { beforeAll, describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id } from "#server/domain/ids.ts";
import { positionOf } from "#server/domain/position-of.ts";
import { broaderTerms } from "#server/domain/region.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { type KnownGraph, knowGraph } from "#server/reasoning/known-graph.ts";
import { drawUpSheet } from "#server/reasoning/sheet/draw-up-sheet.ts";
import { readSeedLines } from "./read-seed-lines.ts";
import { parseSeed, type SeedGraph } from "./seed-graph.ts";

let seed: SeedGraph;
let graph: KnownGraph;
beforeAll(() => {
  seed = parseSeed(readSeedLines());
  graph = knowGraph({ ...seed, cutAt: [] }, ASSUMED);
});
const EACH = 3;
const sheetOf = (form: string, region = "region.england") =>
  inOneGo(drawUpSheet({ form: id(form), region: id(region), each: EACH }, seed.terms, graph));

describe("the field sheets of the seed", () => {
  it("[F3] [F6] have something to look for on every form, each thing once and resting on claims", () => {
    const forms = seed.terms.filter(({ kind }) => kind === "form");
    expect(forms.length).toBeGreaterThan(80);
    for (const form of forms) {
      const { parts, sections } = sheetOf(form.id);
      const entries = sections.flatMap((section) => section.entries);
      expect(parts.length, form.id).toBeGreaterThan(2);
      expect(entries.length, form.id).toBeGreaterThan(15);
      expect(new Set(entries.map(({ feature }) => feature)).size, form.id).toBe(entries.length);
      for (const { claims, feature } of entries) expect(claims.length, feature).toBeGreaterThan(0);
    }
  });

  it("[F4] [F6] look at a chest of drawers from all sides, and at a chair from three", () => {
    const positions = (form: string) => [...new Set(sheetOf(form).sections.map(({ position }) => position))];
    expect(positions("form.chest-of-drawers")).toEqual(["front", "drawers out", "back", "underneath"]);
    expect(positions("form.side-chair")).toEqual(["front", "back", "underneath"]);
  });

  it("[F5] have bounds, signs and habits on the back and on a drawer bottom", () => {
    const { sections } = sheetOf("form.chest-of-drawers");
    for (const part of ["part.back", "part.drawer-bottom"])
      expect(
        sections
          .filter((section) => section.part === part)
          .flatMap(({ entries }) => entries.map(({ tells }) => tells)),
      ).toEqual(["bound", "sign", "habit"]);
  });

  it("[F3] tell a habit of the drawer bottom in England, and another in New England", () => {
    const features = (region: string) =>
      sheetOf("form.chest-of-drawers", region).sections.flatMap(({ entries }) =>
        entries.map(({ feature }) => feature),
      );
    expect(features("region.england")).toContain("feature.bottom-with-muntin");
    expect(features("region.new-england")).not.toContain("feature.bottom-with-muntin");
  });

  it.each([
    ["form.side-chair", "region.philadelphia", "feature.through-tenoned-side-rails"],
    ["form.high-chest", "region.newport", "feature.slipper-foot"],
  ])("[F3] [F5] have on the shortest %s of %s what is typical there", (form, region, feature) => {
    const entryOf = (place: string) =>
      sheetOf(form, place).sections.flatMap(({ entries }) =>
        entries.filter((one) => one.feature === feature),
      );
    expect(entryOf(region)).toMatchObject([{ tells: "typical", isOfPlace: true }]);
    expect(entryOf("region.england")).toEqual([]);
  });

  it("[F1] know of every feature on every kind of part from where it is looked for", () => {
    const broader = broaderTerms(seed.terms);
    const seen = seed.terms
      .filter(({ kind }) => kind === "feature")
      .flatMap(({ parts = [], looking }) =>
        parts.map((part) => positionOf(part, looking?.move, { broader, isOpening: true })),
      );
    const counts = Map.groupBy(seen, (position) => position);
    for (const position of ["front", "drawers out", "back", "underneath"] as const)
      expect(counts.get(position)?.length ?? 0, position).toBeGreaterThan(100);
  });
});
