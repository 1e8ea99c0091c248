import type { Change } from "#server/domain/change.ts";
import type { Citations, Claim } from "#server/domain/claim.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { aClaim } from "./build-claim.ts";
import { aSource, put } from "./build-graph.ts";

const term = (id: string, label: string, rest: object = {}): Term =>
  ({ id, kind: id.split(".")[0] as TermKind, label, ...rest }) as unknown as Term;
const looking = (move: string, how: string, ...aids: readonly string[]) => ({
  looking: { how, move, basis: "common practice", ...(aids.length > 0 ? { aids } : {}) },
});
const published = [{ basis: "published", source: "source.saws", locator: "p. 3" }] as unknown as Citations;

/** Forms, their parts and what is looked for on them; dates are made up. */
export const SHEET_TERMS: readonly Term[] = [
  term("region.world", "world"),
  term("region.home", "Home", { broader: "region.world" }),
  term("region.colony", "Colony", { broader: "region.world" }),
  term("form.case-piece", "case piece", { parts: ["part.carcase", "part.back", "part.drawer", "part.foot"] }),
  term("form.bureau", "bureau", { broader: "form.case-piece", otherLabels: ["writing chest"] }),
  term("form.stool", "stool", { parts: ["part.leg", "part.seat"] }),
  term("part.whole", "whole piece"),
  term("part.carcase", "carcase"),
  term("part.back", "back", { broader: "part.carcase" }),
  term("part.drawer", "drawer"),
  term("part.drawer-bottom", "drawer bottom", { broader: "part.drawer" }),
  term("part.foot", "foot"),
  term("part.leg", "leg"),
  term("part.seat", "seat"),
  term("tool.disc-saw", "disc saw"),
  term("feature.arcs", "saw arcs", {
    parts: ["part.back", "part.drawer-bottom", "part.leg"],
    ...looking("piece turned", "Rake the lamp across the board. Measure three arcs.", "raking light", "rule"),
  }),
  term("feature.coarse-arcs", "coarse saw arcs", {
    broader: "feature.arcs",
    parts: ["part.back"],
    ...looking("piece turned", "Count the arcs."),
  }),
  term("feature.empty-holes", "holes that hold nothing", {
    parts: ["part.back"],
    ...looking("nothing", "Look for holes without a nail."),
  }),
  term("feature.slips", "drawer slips", {
    parts: ["part.drawer-bottom"],
    ...looking("drawer out", "Turn the drawer over."),
  }),
  term("feature.worn-edge", "worn edge", {
    parts: ["part.drawer"],
    ...looking("drawer out", "Feel the edge."),
  }),
  term("feature.late-pigment", "late pigment", {
    parts: ["part.carcase"],
    ...looking("sample taken", "A laboratory finds it."),
  }),
  term("feature.loose-screw", "turned screw", {
    parts: ["part.back"],
    ...looking("something unfastened", "Turn it out."),
  }),
  term("feature.nailed-boards", "nailed back boards", {
    parts: ["part.back"],
    ...looking("piece turned", "Count the boards."),
  }),
  term("feature.stool-plate", "copied from a plate of stools", {
    parts: ["part.whole"],
    ...looking("nothing", "Lay the plate beside it."),
  }),
  term("feature.seat-plate", "copied from a plate of seats", {
    parts: ["part.whole", "part.seat"],
    ...looking("nothing", "Lay the plate beside it."),
  }),
  term("feature.lost-shelf", "scar of a lost shelf", {
    parts: ["part.carcase"],
    ...looking("drawer out", "Put a lamp into the case."),
  }),
  term("feature.turned-bun", "turned bun", { parts: ["part.foot"], ...looking("nothing", "Kneel.") }),
  term("feature.mute", "scratch", { parts: ["part.foot"], ...looking("nothing", "Look.") }),
];

/** What is claimed of them. */
export const SHEET_CLAIMS: readonly Claim[] = [
  aClaim({
    id: "claim.disc-saw",
    relation: "introduced",
    subject: "tool.disc-saw",
    region: "region.home",
    when: "1800",
    citations: published,
  }),
  aClaim({ id: "claim.arcs", relation: "requires", subject: "feature.arcs", ways: [["tool.disc-saw"]] }),
  aClaim({ id: "claim.coarse", relation: "introduced", subject: "feature.coarse-arcs", when: "1900" }),
  aClaim({
    id: "claim.holes",
    relation: "indicates",
    subject: "feature.empty-holes",
    states: ["reworked"],
    strength: "firm",
  }),
  aClaim({
    id: "claim.slips",
    relation: "common from",
    subject: "feature.slips",
    region: "region.home",
    when: "1790",
  }),
  aClaim({ id: "claim.worn", relation: "indicates", subject: "feature.worn-edge", states: ["original"] }),
  aClaim({ id: "claim.pigment", relation: "introduced", subject: "feature.late-pigment", when: "1850" }),
  aClaim({ id: "claim.screw", relation: "introduced", subject: "feature.loose-screw", when: "1846" }),
  aClaim({
    ...{ id: "claim.boards", relation: "common from", subject: "feature.nailed-boards" },
    ...{ region: "region.home", when: "1720" },
  }),
  aClaim({ id: "claim.plate", relation: "introduced", subject: "feature.stool-plate", when: "1760" }),
  aClaim({ id: "claim.seats", relation: "introduced", subject: "feature.seat-plate", when: "1770" }),
  aClaim({ id: "claim.shelf", relation: "indicates", subject: "feature.lost-shelf", states: ["reworked"] }),
  aClaim({
    id: "claim.of-stools",
    relation: "typical of",
    subject: "feature.stool-plate",
    object: "form.stool",
  }),
  aClaim({
    id: "claim.bun",
    relation: "attested",
    subject: "feature.turned-bun",
    region: "region.home",
    when: "1690",
  }),
];

/** The same as a change of an empty graph. */
export const sheetGraph: Change = [
  ...SHEET_TERMS.map((after) => put("term", after)),
  put("source", aSource("source.saws")),
  ...SHEET_CLAIMS.map((after) => put("claim", after)),
];
