import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { drawUpSheet, type Sheet } from "#server/reasoning/sheet/draw-up-sheet.ts";
import { evenness, yearsInQuestion } from "#server/reasoning/sheet/evenness.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { SHEET_CLAIMS, SHEET_TERMS } from "#tests/support/sheet-graph.ts";

interface Sketch {
  readonly form?: string;
  readonly region?: string;
  readonly date?: string;
  readonly each?: number;
  readonly claims?: readonly Claim[];
}

function sheetOf({ form = "form.bureau", region, date, each = 5, claims = [] }: Sketch = {}): Sheet {
  const graph = knowGraph(neighbourhoodOf(SHEET_TERMS, [...SHEET_CLAIMS, ...claims]), ASSUMED);
  const ask = {
    ...{ form: id<"term">(form), each },
    ...(region === undefined ? {} : { region: id<"term">(region) }),
    ...(date === undefined ? {} : { date }),
  };
  return inOneGo(drawUpSheet(ask, SHEET_TERMS, graph));
}
const entriesOf = (sheet: Sheet) => sheet.sections.flatMap(({ entries }) => entries);
const entry = (sheet: Sheet, feature: string) => entriesOf(sheet).find((one) => one.feature === feature);
const AT_HOME = { region: "region.home" };

describe("what is worth looking for", () => {
  it("[F3] is what bounds the years over a chain, resting on every claim of it", () => {
    expect(entry(sheetOf(AT_HOME), "feature.arcs")).toMatchObject({
      ...{ tells: "bound", possible: [[1800, null]], isAssumed: false },
      claims: ["claim.arcs", "claim.disc-saw"],
    });
  });

  it("[F3] is a bound of elsewhere only as far as known", () => {
    expect(entry(sheetOf({ region: "region.colony" }), "feature.arcs")).toMatchObject({
      possible: [[1800, null]],
      isAssumed: true,
    });
  });

  it("[F3] is a sign, a habit of the place, and a record of it", () => {
    const sheet = sheetOf(AT_HOME);
    expect(entry(sheet, "feature.empty-holes")).toMatchObject({
      tells: "sign",
      isOfChange: true,
      strength: "firm",
    });
    expect(entry(sheet, "feature.worn-edge")).toMatchObject({ tells: "sign", isOfChange: false });
    expect(entry(sheet, "feature.slips")).toMatchObject({ tells: "habit", usual: [[1790, null]] });
    expect(entry(sheet, "feature.turned-bun")).toMatchObject({ tells: "record", claims: ["claim.bun"] });
  });

  it("[F3] is no habit and no record of another place, and nothing that no claim says anything of", () => {
    const sheet = sheetOf({ region: "region.colony" });
    expect(entry(sheet, "feature.slips")).toBeUndefined();
    expect(entry(sheet, "feature.turned-bun")).toBeUndefined();
    expect(entry(sheet, "feature.mute")).toBeUndefined();
  });

  it("[F3] without a place is what single places say too", () => {
    expect(entry(sheetOf(), "feature.slips")).toMatchObject({
      ...{ tells: "habit", usual: [[null, null]], claims: ["claim.slips"], evenness: 161 },
    });
  });

  it("[F3] is what is typical of the place, of one within or around it, and of the form", () => {
    const typical = (object: string, rest: object = {}) =>
      aClaim({ id: "claim.mute", relation: "typical of", subject: "feature.mute", object, ...rest });
    const found = (object: string, sketch: Sketch, rest?: object) =>
      entry(sheetOf({ ...sketch, claims: [typical(object, rest)] }), "feature.mute");
    const told = { tells: "typical", possible: [[null, null]], usual: [[null, null]], isAgainstDate: false };
    expect(found("region.home", AT_HOME)).toMatchObject({ ...told, isOfPlace: true });
    expect(found("region.home", { region: "region.world" })).toMatchObject({ ...told, isOfPlace: false });
    expect(found("region.world", AT_HOME)).toMatchObject({ ...told, isOfPlace: false });
    expect(found("region.home", {})).toMatchObject({ ...told, isOfPlace: false });
    expect(found("region.home", { region: "region.colony" })).toBeUndefined();
    expect(found("form.case-piece", AT_HOME)).toMatchObject(told);
    expect(found("form.stool", AT_HOME)).toBeUndefined();
    expect(found("tool.disc-saw", AT_HOME)).toBeUndefined();
    expect(found("region.home", AT_HOME, { form: "form.stool" })).toBeUndefined();
  });

  it("[F3] is more than typical where years or a sign say more, and then both", () => {
    const typical = (subject: string) =>
      aClaim({
        id: "claim.typical",
        relation: "typical of",
        subject,
        object: "region.home",
        strength: "tentative",
      });
    const found = (subject: string) => entry(sheetOf({ ...AT_HOME, claims: [typical(subject)] }), subject);
    expect(found("feature.slips")).toMatchObject({
      ...{ tells: "habit", strength: "usual", isOfPlace: true },
      claims: ["claim.slips", "claim.typical"],
    });
    expect(found("feature.turned-bun")).toMatchObject({
      ...{ tells: "typical", strength: "tentative" },
      claims: ["claim.bun", "claim.typical"],
    });
  });

  it("[F3] keeps to the form and the part that a claim is scoped to", () => {
    const scoped = aClaim({
      ...{ id: "claim.mute", relation: "indicates", subject: "feature.mute", states: ["later"] },
      ...{ form: "form.stool" },
    });
    expect(entry(sheetOf({ claims: [scoped] }), "feature.mute")).toBeUndefined();
    const wider = aClaim({
      ...{ id: "claim.mute", relation: "indicates", subject: "feature.mute", states: ["later"] },
      ...{ form: "form.case-piece", part: "part.foot" },
    });
    expect(entry(sheetOf({ claims: [wider] }), "feature.mute")).toMatchObject({ isOfForm: true });
  });

  it("[F3] leaves out of the whole piece what is said of other forms alone", () => {
    expect(entry(sheetOf(), "feature.stool-plate")).toBeUndefined();
    expect(entry(sheetOf({ form: "form.stool" }), "feature.stool-plate")).toMatchObject({ tells: "bound" });
  });

  it("[F3] knows what would contradict the claimed date, and asks only about the years around it", () => {
    const sheet = sheetOf({ ...AT_HOME, date: "1760/1770" });
    expect(entry(sheet, "feature.arcs")).toMatchObject({ isAgainstDate: true, evenness: 71 });
    expect(entry(sheetOf({ ...AT_HOME, date: "1950" }), "feature.slips")).toBeUndefined();
  });

  it("[F3] weighs how evenly years divide those in question", () => {
    expect(yearsInQuestion(undefined)).toEqual([1600, 1950]);
    expect(yearsInQuestion([1760, 1770])).toEqual([1660, 1870]);
    expect(yearsInQuestion([Number.NEGATIVE_INFINITY, 1770])).toEqual([1600, 1950]);
    expect(evenness([[1793, Number.POSITIVE_INFINITY]], [1600, 1950])).toBe(158);
    expect(evenness([[1000, 1900]], [1600, 1950])).toBe(50);
    expect(evenness([[1300, Number.POSITIVE_INFINITY]], [1600, 1950])).toBe(0);
  });
});

describe("a sheet", () => {
  it("[F1] [F6] goes round the piece, and under each position part by part", () => {
    expect(sheetOf(AT_HOME).sections.map(({ position, part }) => `${position}: ${part}`)).toEqual([
      "front: part.foot",
      "drawers out: part.drawer",
      "drawers out: part.carcase",
      "back: part.back",
    ]);
  });

  it("[F2] has the parts of a broader form, and what is looked for on a drawer bottom on the drawer", () => {
    const sheet = sheetOf(AT_HOME);
    expect(sheet.parts).toEqual(["part.carcase", "part.back", "part.drawer", "part.foot"]);
    expect(entry(sheet, "feature.slips")?.part).toBe("part.drawer");
  });

  it("[F2] looks for what has particular parts only where there is one of them", () => {
    expect(entry(sheetOf(), "feature.seat-plate")).toBeUndefined();
    expect(entry(sheetOf({ form: "form.stool" }), "feature.seat-plate")).toMatchObject({ tells: "bound" });
  });

  it("[F5] leaves out what needs a sample, puts last what is unfastened, and counts both", () => {
    const sheet = sheetOf({ ...AT_HOME, each: 8 });
    expect(entry(sheet, "feature.late-pigment")).toBeUndefined();
    const back = sheet.sections.find(({ part }) => part === "part.back");
    expect(back?.entries.map(({ feature }) => feature)).toEqual([
      ...["feature.coarse-arcs", "feature.loose-screw", "feature.empty-holes", "feature.nailed-boards"],
    ]);
  });

  it("[F6] tells a feature once, names it again on a later part, and counts the rest", () => {
    const told = entriesOf(sheetOf(AT_HOME)).map(({ feature }) => feature);
    expect(new Set(told).size).toBe(told.length);
    const { sections } = sheetOf({ ...AT_HOME, each: 1 });
    expect(
      sections.map(({ part, entries, again, more }) => [
        part,
        entries.map(({ feature }) => feature),
        again,
        more,
      ]),
    ).toEqual([
      ["part.foot", ["feature.turned-bun"], [], 0],
      ["part.drawer", ["feature.arcs"], [], 2],
      ["part.carcase", ["feature.lost-shelf"], [], 1],
      ["part.back", ["feature.coarse-arcs"], ["feature.arcs"], 3],
    ]);
  });

  it("is the same whatever the order of terms and claims", () => {
    const graph = knowGraph(neighbourhoodOf(SHEET_TERMS, SHEET_CLAIMS.toReversed()), ASSUMED);
    const ask = { form: id<"term">("form.bureau"), region: id<"term">("region.home"), each: 5 };
    expect(inOneGo(drawUpSheet(ask, SHEET_TERMS.toReversed(), graph))).toEqual(sheetOf(AT_HOME));
  });

  it("has nothing on it for a form of which nothing is known", () => {
    expect(sheetOf({ form: "form.unheard-of" }).sections).toEqual([]);
  });
});
