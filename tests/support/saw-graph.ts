import type { Change } from "#server/domain/change.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { aClaim } from "./build-claim.ts";

const term = (id: string, label: string, rest: Partial<Record<string, unknown>> = {}): Term =>
  ({ id, kind: id.split(".")[0] as TermKind, label, ...rest }) as unknown as Term;

/** A made-up source: only the form of it matters to the tests that use it. */
export const SAW_BOOK = {
  id: "source.saw-book",
  kind: "book",
  csl: {
    id: "source.saw-book",
    type: "book",
    title: "Saws and their marks",
    author: [{ family: "Example", given: "Ann" }],
    issued: { "date-parts": [[1999]] },
    URL: "https://example.org/saws",
  },
  reading: "read",
} as unknown as Source;

/** A small graph: round saw marks need a circular saw, which came in 1790 in England; made-up dates. */
export const sawGraph: Change = [
  ...[
    term("region.world", "the world"),
    term("region.england", "England", { broader: "region.world" }),
    term("region.london", "London", { broader: "region.england" }),
    term("form.chest", "chest"),
    term("style.plain", "plain style"),
    term("part.drawer", "drawer"),
    term("part.drawer-bottom", "drawer bottom", { broader: "part.drawer" }),
    term("tool.circular-saw", "circular saw", {
      aat: { id: "300022464", label: "circular saws", checked: false },
    }),
    term("feature.round-saw-marks", "round saw marks", {
      otherLabels: ["arc marks"],
      note: "Arcs of one radius.",
      parts: ["part.drawer-bottom"],
    }),
    term("feature.rough-ground", "rough ground"),
    term("feature.gesso", "traces of gesso"),
  ].map((after) => ({ kind: "term" as const, after })),
  { kind: "source", after: SAW_BOOK },
  ...[
    aClaim({
      id: "claim.marks",
      relation: "requires",
      subject: "feature.round-saw-marks",
      ways: [["tool.circular-saw"]],
    }),
    aClaim({
      id: "claim.saw",
      relation: "introduced",
      subject: "tool.circular-saw",
      region: "region.england",
      when: "1790",
      citations: [{ basis: "published", source: SAW_BOOK.id, locator: "p. 12" }],
    }),
    aClaim({
      id: "claim.ground",
      relation: "indicates",
      subject: "feature.rough-ground",
      states: ["later", "reworked"],
    }),
    aClaim({
      id: "claim.ground-gilded",
      relation: "void when",
      of: "claim.ground",
      condition: "feature.gesso",
    }),
    aClaim({ id: "claim.plain", relation: "current", subject: "style.plain", when: "1750/1800" }),
    aClaim({
      id: "claim.plain-saw",
      relation: "typical of",
      subject: "tool.circular-saw",
      object: "style.plain",
    }),
    aClaim({
      id: "claim.confined",
      relation: "confined to",
      subject: "style.plain",
      regions: ["region.england"],
    }),
    aClaim({
      id: "claim.spread",
      relation: "spread to",
      subject: "tool.circular-saw",
      from: "region.england",
      to: "region.london",
      years: [0, 5],
    }),
    aClaim({
      id: "claim.not-london",
      relation: "not found in",
      subject: "style.plain",
      region: "region.london",
      when: "1760/1765",
    }),
  ].map((after) => ({ kind: "claim" as const, after })),
];

/** A piece as input of the API that the saw marks speak against. */
export const sawnChest = {
  title: "Chest of the test",
  invented: true,
  examined: 2026,
  attribution: { date: "1760/1775", region: "region.england", form: "form.chest" },
  parts: [
    { id: "carcase", label: "Carcase" },
    { id: "bottom", label: "Drawer bottom", kind: "part.drawer-bottom", within: "carcase" },
  ],
  observations: [
    { id: "o1", part: "bottom", feature: "feature.round-saw-marks", seen: "PRESENT", sureness: "SURE" },
  ],
};
