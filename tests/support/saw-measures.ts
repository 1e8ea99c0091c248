import type { ReferenceRow } from "#server/domain/reference-row.ts";
import { SAW_BOOK } from "./saw-graph.ts";

/** Made-up rows about the terms of `sawGraph`: two that differ, a range, a formula, and one of a term that is not there. */
export const SAW_MEASURES = [
  {
    id: "saw-marks.blade-london",
    table: "saw-marks",
    term: "tool.circular-saw",
    quantity: "diameter of the blade",
    value: 760,
    unit: "mm",
    strength: "firm",
    scope: { region: "region.london" },
    citations: [{ basis: "published", source: SAW_BOOK.id, locator: "p. 31" }],
  },
  {
    id: "saw-marks.blade-memory",
    table: "saw-marks",
    term: "tool.circular-saw",
    quantity: "diameter of the blade",
    value: 900,
    unit: "mm",
    strength: "tentative",
    citations: [{ basis: "from memory" }],
    note: "Of one mill only.",
  },
  {
    id: "saw-marks.pitch",
    table: "saw-marks",
    term: "tool.circular-saw",
    quantity: "distance between the arcs",
    from: 1.5,
    to: 4,
    unit: "mm",
    strength: "usual",
    citations: [{ basis: "common practice" }],
  },
  {
    id: "rules.radius",
    table: "rules",
    term: "tool.circular-saw",
    quantity: "radius from chord and height",
    value: "c²/8h + h/2",
    strength: "certain",
    citations: [{ basis: "published", source: "source.not-there", locator: "p. 1" }],
  },
  {
    id: "saw-marks.stranger",
    table: "saw-marks",
    term: "tool.not-there",
    quantity: "teeth",
    value: 12,
    strength: "usual",
    citations: [{ basis: "common practice" }],
  },
] as unknown as readonly ReferenceRow[];
