import { beforeAll, describe, expect, it } from "vitest";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Finding } from "#server/domain/report.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";

let store: Store;

beforeAll(async () => {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  store = openMemoryStore();
  const seeded = await seedStore(store, seed);
  if (isProblem(seeded)) throw new Error(seeded.message);
});

/** What the seed says of features seen on one part of a piece claimed for a region. */
async function find(features: readonly string[], region: string, date = "1500/2000"): Promise<Finding> {
  const piece: Piece = {
    title: "Trial",
    invented: true,
    examined: 2026,
    attribution: { date, region: id<"term">(`region.${region}`) },
    parts: [{ id: id<"part">("part"), label: "Part" }],
    observations: features.map((feature, i) => ({
      id: id<"observation">(`o${i}`),
      part: id<"part">("part"),
      feature: id<"term">(`feature.${feature}`),
      seen: "present",
      sureness: "sure",
    })),
    together: [],
    separate: [],
  };
  const examined = await examinePiece({ store }, piece);
  if (isRefusal(examined)) throw new Error(examined.refused[0].message);
  const finding = examined.report.findings.find(({ observation }) => observation === "o0");
  if (!finding) throw new Error(`No finding on ${features[0]}`);
  return finding;
}

/** First possible year of a feature; null if nothing bounds it. */
const firstPossible = async (feature: string, region: string): Promise<number | null> =>
  (await find([feature], region)).possible.outer[0]?.[0] ?? null;

describe("what honest pieces show is never called impossible", () => {
  it.each([
    ["circular-saw-mark", "philadelphia", "the start of the circular saw is contested"],
    ["circular-saw-mark", "england", "the start of the circular saw is contested"],
    ["cut-nail-stamped-head", "boston", "patents for heading are no beginning"],
    ["sheared-tack-machine-head", "england", "the American patent is no beginning for Britain"],
    ["rolled-thread-screw", "philadelphia", "one patent is no beginning of thread rolling"],
    ["pressed-glass-knob", "england", "small glass was pressed by hand before the lever press"],
    ["stamped-backplate", "philadelphia", "the press of 1769 is not the first die"],
    ["plywood-panel", "england", "imports of 1895 are no beginning"],
    ["lathe-checks-without-kerfs", "paris", "nobody knows the first slicer"],
    ["even-abrasive-scratches", "philadelphia", "patents for sandpaper are late"],
    ["high-zinc-brass", "england", "zinc metal was at hand before the patent"],
    ["brown-crazed-glue", "london", "animal glue is old"],
    ["gimlet-point-screw", "paris", "nothing is known of Continental makers"],
    ["nailed-rebated-drawer", "england", "cheap drawers were nailed again later"],
    ["round-nail-shank", "england", "wire pins made by hand are old"],
    ["hand-cut-dovetail", "philadelphia", "hand work never ended"],
    ["jme-stamp", "paris", "stamps were forged, and widows used them on"],
    ["crowned-c", "paris", "the tax struck old stock too"],
    ["country-name-on-import", "england", "voluntary marks are older than the law"],
    ["wove-paper", "london", "the first wove mould is only attested"],
    ["chromium-green-found", "paris", "the metal is dated from memory"],
    ["composition-ornament", "london", "its glue is old and never went out of use"],
    ["part-and-counterpart", "paris", "the first fret blade is remembered, not known"],
    ["twist-turning", "england", "twists were rasped by hand"],
    ["sheet-cane-in-groove", "boston", "no loom for cane is firmly dated"],
    ["amalgam-mirror", "england", "blown plates were silvered long before cast ones"],
    ["square-nail-hole", "boston", "a forged nail is old"],
    ["hidden-wood-tulip-poplar", "boston", "records name the wood there"],
    ["colourless-shellac", "england", "how colourless is a matter of degree"],
    ["wood-wool-stuffing", "boston", "the patent of a machine is no beginning of shavings"],
    ["nitrate-leathercloth-cover", "philadelphia", "one text without a place is no floor"],
  ])("%s in %s: %s", async (feature, region) => {
    expect((await find([feature], region)).possible.outer).toEqual([[null, null]]);
  });

  it("mill sawing on the Continent is older than its first American date", async () => {
    expect(await firstPossible("sash-saw-mark", "england")).toBeLessThanOrEqual(1593);
    expect(await firstPossible("sash-saw-mark", "boston")).toBe(1634);
  });

  it("imports come before home making", async () => {
    expect(await firstPossible("gimlet-point-screw", "england")).toBeLessThan(1854);
    expect(await firstPossible("wire-nail", "philadelphia")).toBeLessThan(1850);
    expect(await firstPossible("band-saw-mark", "boston")).toBeLessThan(1868);
  });

  it("the earlier of two rival dates decides what is possible", async () => {
    expect(await firstPossible("gimlet-point-screw", "philadelphia")).toBe(1841);
  });

  it("what copies a plate can be as old as the plate, which is older than its book", async () => {
    expect(await firstPossible("copied-plate-1788", "england")).toBe(1787);
    expect(await firstPossible("copied-plate-1808", "england")).toBe(1804);
    expect(await firstPossible("copied-plate-1868", "england")).toBe(1864);
  });

  it("a piece from which a plate was drawn can be older than the plate", async () => {
    for (const plate of [
      "copied-plate-1754",
      "copied-plate-1807",
      "copied-plate-1808",
      "copied-plate-empire",
    ])
      expect((await find([plate, "piece-the-plate-was-drawn-from"], "england")).possible.outer).toEqual([
        [null, null],
      ]);
  });
});

describe("what could not yet be made is called impossible", () => {
  /** Years of the patents and the record cited by the claims. */
  it.each([
    ["band-saw-mark", "england", 1808],
    ["planer-scallops", "philadelphia", 1793],
    ["pin-and-cove-corner", "boston", 1867],
    ["cross-head-screw", "england", 1933],
    ["machine-cut-blunt-screw", "england", 1760],
    ["wire-nail", "paris", 1806],
    ["lever-tumblers", "england", 1778],
    ["detector-lever", "england", 1818],
    ["chromium-plate", "england", 1838],
    ["plastic-knob", "philadelphia", 1907],
    ["hardboard", "boston", 1926],
    ["chipboard", "german-lands", 1887],
  ])("%s in %s before %i", async (feature, region, year) => {
    expect(await firstPossible(feature, region)).toBe(year);
    expect(await find([feature], region, "1700/1750")).toMatchObject({
      label: "contradictory",
      hardness: "physical",
    });
  });

  it("habit alone is out of its time", async () => {
    expect(await find(["circular-saw-mark"], "philadelphia", "1760/1780")).toMatchObject({
      label: "contradictory",
      hardness: "practice",
    });
  });
});

describe("innocent causes take a claim out of play", () => {
  it.each([
    ["gimlet-point-screw", "replacement-screw-in-old-hole", "philadelphia"],
    ["gimlet-point-screw", "hand-filed-screw-point", "england"],
    ["cross-head-screw", "replacement-screw-in-old-hole", "england"],
    ["planer-scallops", "hand-plane-chatter", "boston"],
    ["wire-nail", "nail-beside-older-hole", "philadelphia"],
    ["sash-saw-mark", "imported-board", "boston"],
    ["rounded-dovetail-sockets", "bored-out-socket", "boston"],
    ["rotary-cut-moulding", "ripple-moulding", "england"],
    ["rotary-cut-moulding", "hand-plane-chatter", "philadelphia"],
    ["flat-arcs-on-glue-face", "wavering-lines-on-glue-face", "paris"],
    ["silvered-mirror", "silver-leaf-behind-glass", "england"],
  ])("%s with %s", async (feature, cause, region) => {
    expect((await find([feature], region, "1600/1630")).label).toBe("contradictory");
    const excused = await find([feature, cause], region, "1600/1630");
    expect(excused.hardness).not.toBe("physical");
    expect(excused.setAside).toContainEqual(expect.objectContaining({ reason: "defeated" }));
  });
});
