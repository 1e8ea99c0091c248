import { beforeAll, describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import type { Finding, Report, Sign } from "#server/domain/report.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";

const reports = new Map<string, Report>();

beforeAll(async () => {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  const seeded = await seedStore(store, seed);
  if (isProblem(seeded)) throw new Error(seeded.message);
  for (const { id, piece } of seed.pieces) {
    const examined = await examinePiece({ store }, piece);
    if (isRefusal(examined)) throw new Error(`${id}: ${examined.refused[0].message}`);
    if (!piece.invented) throw new Error(`${id} is not marked as invented`);
    reports.set(id, examined.report);
  }
});

function reportOf(name: string): Report {
  const report = reports.get(`examination.${name}`);
  if (!report) throw new Error(`No demonstration ${name}`);
  return report;
}

const contradictory = ({ findings }: Report): readonly Finding[] =>
  findings.filter(({ label }) => label === "contradictory");
const partsOf = (findings: readonly Finding[]) => findings.map(({ part }) => part).sort();
const against = ({ signs }: Report, part: string): readonly Sign[] =>
  signs.filter(
    (sign) =>
      sign.part === part &&
      sign.standing === "stands" &&
      (sign.speaks === "against" || !sign.states.includes("original")),
  );
/** Exceptions that set a sign on a feature aside, by claim. */
const excuses = ({ signs }: Report, feature: string): readonly string[] =>
  signs
    .filter((sign) => sign.feature === feature)
    .flatMap(({ because }) => because.map((by) => by.exception));

describe("the chest of drawers that fails for three reasons", () => {
  const chest = () => reportOf("millrace-chest");

  const impossible = () => contradictory(chest()).filter(({ hardness }) => hardness === "physical");

  it("cannot be on three parts that have nothing to do with each other, and is unusual on a fourth", () => {
    expect(partsOf(impossible())).toEqual(["feet", "lower-drawers", "top-screws"]);
    expect(partsOf(contradictory(chest()))).toEqual(["back", "feet", "lower-drawers", "top-screws"]);
  });

  it("rests each reason on claims that the others do not use", () => {
    const claims = contradictory(chest()).flatMap(({ support }) => support.claims);
    expect(claims.length).toBeGreaterThanOrEqual(3);
    expect(new Set(claims).size).toBe(claims.length);
  });

  it("finds all of them too late", () => {
    expect(new Set(contradictory(chest()).map(({ direction }) => direction))).toEqual(new Set(["late"]));
  });

  it("says of one reason of the three that a look could void it: did a bow saw cut the curve?", () => {
    const open = impossible().filter(({ voidIf }) => voidIf.length > 0);
    expect(open.map(({ feature }) => feature)).toEqual(["feature.band-saw-mark"]);
    expect(open[0]?.voidIf).toEqual([
      expect.objectContaining({ condition: "feature.bow-saw-mark", standing: "not-looked-for" }),
    ]);
  });

  it("is ruled out by each of the three parts and by no other", () => {
    const { ruleOuts, notSearched } = chest();
    const attribution = ruleOuts.filter(
      ({ against: what, hardness }) => what === "attribution" && hardness === "physical",
    );
    expect(new Set(attribution.flatMap(({ parts }) => parts))).toEqual(
      new Set(["feet", "lower-drawers", "top-screws"]),
    );
    expect(notSearched).toEqual([]);
  });
});

describe("the sound chest with innocent oddities", () => {
  const chest = () => reportOf("saltmarsh-chest");

  it("has nothing against its date, and features that agree with it", () => {
    expect(contradictory(chest())).toEqual([]);
    expect(chest().ruleOuts).toEqual([]);
    expect(chest().findings.filter(({ label }) => label === "consistent").length).toBeGreaterThanOrEqual(3);
  });

  it("shows eight signs of change, each set aside by what was seen beside it", () => {
    const change = chest().signs.filter(({ states }) => !states.includes("original"));
    expect(change.length).toBe(8);
    expect(change.filter(({ standing }) => standing !== "set-aside")).toEqual([]);
    expect(change.every(({ because }) => because.length > 0)).toBe(true);
  });
});

describe("the drop-leaf table with later leaves", () => {
  const table = () => reportOf("ropewalk-table");

  it("is contradicted on both leaves, and on nothing else", () => {
    expect(partsOf(contradictory(table()))).toEqual(["left-leaf", "right-leaf"]);
    expect(contradictory(table()).every(({ hardness }) => hardness === "physical")).toBe(true);
  });

  it("misses on the leaves what every old board shows", () => {
    expect(against(table(), "left-leaf").length).toBeGreaterThanOrEqual(2);
    expect(against(table(), "right-leaf").length).toBeGreaterThanOrEqual(1);
  });

  it("has a frame that agrees with the claim", () => {
    const agreeing = table().findings.filter(({ label }) => label === "consistent");
    expect(partsOf(agreeing)).toEqual(["fixed-legs", "frame"]);
    for (const part of ["frame", "rails", "fixed-legs", "swing-legs", "top"])
      expect(against(table(), part), part).toEqual([]);
  });
});

describe("the chair with rough carving once gilded", () => {
  const chair = () => reportOf("larkspur-chair");

  it("sets the rough ground aside on both carved parts, because gesso was found in it", () => {
    expect(excuses(chair(), "feature.rough-carved-ground")).toEqual(["claim.J28-gesso", "claim.J28-gesso"]);
    expect(against(chair(), "back-carving")).toEqual([]);
    expect(against(chair(), "leg-carving")).toEqual([]);
  });

  it("still says that the finish was stripped, and has nothing against its date", () => {
    expect(against(chair(), "finish").map(({ claim }) => claim)).toEqual(["claim.J61"]);
    expect(contradictory(chair())).toEqual([]);
  });
});
