import { describe, expect, it } from "vitest";
import type { Term } from "#server/domain/term.ts";
import { readSeedLines } from "#tests/seed/read-seed-lines.ts";
import { ALL_DRAWINGS } from "#web/drawings/features/all-drawings.ts";
import { DRAWINGS_OF_TERMS, findDrawing } from "#web/drawings/find-drawing.ts";

const terms = new Map(
  readSeedLines()
    .filter(({ folder }) => folder === "terms")
    .map(({ text }) => JSON.parse(text) as Term)
    .map((term) => [term.id as string, term]),
);
const termOf = (id: string): Term => {
  const term = terms.get(id);
  if (!term) throw new Error(`no term ${id}`);
  return term;
};
const broaderOf = (id: string): Term["id"][] => {
  const { broader } = termOf(id);
  return broader === undefined ? [] : [broader, ...broaderOf(broader)];
};
const drawingOf = (id: string) => findDrawing(termOf(id).id, broaderOf(id));

/** Drawings ready for terms that the graph has not got yet. */
const WITHOUT_A_TERM = [
  "astragal-profile",
  "bow-front",
  "card-table-hinge",
  "cavetto-profile",
  "cyma-recta-profile",
  "cyma-reversa-profile",
  "double-arch-profile",
  "mitred-dovetail",
  "ovolo-profile",
  "quirked-bead-profile",
  "scotia-profile",
  "spade-foot",
  "strap-hinge",
  "thumbnail-profile",
];

describe("which drawing shows a term", () => {
  it("is known for terms that the seed graph has, and for no others", () => {
    expect([...DRAWINGS_OF_TERMS.keys()].filter((id) => !terms.has(id))).toEqual([]);
  });

  it("is known for at least 60 features, each by a drawing of its own, and for forms", () => {
    const drawn = [...DRAWINGS_OF_TERMS].filter(([id]) => id.startsWith("feature."));
    expect(new Set(drawn.map(([, key]) => key)).size).toBeGreaterThanOrEqual(60);
    expect(
      [...DRAWINGS_OF_TERMS.keys()].filter((id) => id.startsWith("form.")).length,
    ).toBeGreaterThanOrEqual(7);
  });

  it("names a drawing there is, and every drawing is shown somewhere but those waiting for a term", () => {
    const shown = new Set<string>(DRAWINGS_OF_TERMS.values());
    expect([...shown].filter((key) => !(key in ALL_DRAWINGS))).toEqual([]);
    const waiting = Object.keys(ALL_DRAWINGS).filter((key) => !shown.has(key));
    expect(waiting.sort()).toEqual(WITHOUT_A_TERM);
  });

  it("is a term's own before that of a broader one, and the nearest broader one's before those beyond", () => {
    expect(drawingOf("feature.large-radius-circular-saw-mark")).toBe("large-circular-saw-mark");
    expect(drawingOf("feature.cut-nail-fibre-along")).toBe("cut-nail");
    expect(drawingOf("feature.gimp-pin")).toBe("gimp-pin");
    expect(drawingOf("feature.sheared-tack-machine-head")).toBe("sheared-tack");
    expect(drawingOf("form.gate-leg-table")).toBe("drop-leaf-table");
  });

  it("is not taken over from a broader tool, since a narrower one may leave another mark", () => {
    expect(drawingOf("tool.circular-saw")).toBe("circular-saw-mark");
    expect(broaderOf("tool.inclined-saw-discs")).toContain("tool.circular-saw");
    expect(drawingOf("tool.inclined-saw-discs")).toBeUndefined();
  });

  it("is unknown where nothing would be gained by a drawing", () => {
    expect(drawingOf("feature.orange-fluorescence")).toBeUndefined();
    expect(drawingOf("region.new-england")).toBeUndefined();
  });
});
