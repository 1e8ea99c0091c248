import type { Change } from "#server/domain/change.ts";
import type { Term, TermKind } from "#server/domain/term.ts";
import { aClaim } from "./build-claim.ts";

const term = (id: string, label: string, rest: object = {}): Term =>
  ({ id, kind: id.split(".")[0] as TermKind, label, ...rest }) as unknown as Term;
const dated = (id: string, subject: string, when: string, rest: object = {}) =>
  aClaim({ id, relation: "introduced", subject, when, ...rest });

/** Marks of a made-up mill, the tools they need and what those need: two steps around `tool.mill`; made-up dates. */
export const aroundGraph: Change = [
  ...[
    term("region.world", "world"),
    term("region.here", "Here", { broader: "region.world" }),
    term("region.there", "There", { broader: "region.world" }),
    term("part.back", "back"),
    term("form.chest", "chest", { parts: ["part.back"] }),
    term("tool.machine", "machine"),
    term("tool.mill", "mill", { broader: "tool.machine" }),
    term("tool.wheel", "water wheel"),
    term("tool.small-mill", "small mill", { broader: "tool.mill" }),
    term("material.board", "milled board"),
    term("style.plain", "plain style"),
    term("feature.gesso", "traces of gesso"),
    ...Array.from({ length: 12 }, (_, i) =>
      term(
        `feature.mark-${String(i).padStart(2, "0")}`,
        `mark ${i}`,
        i === 3 ? { parts: ["part.back"] } : {},
      ),
    ),
  ].map((after) => ({ kind: "term" as const, after })),
  ...[
    ...Array.from({ length: 12 }, (_, i) =>
      aClaim({
        id: `claim.mark-${String(i).padStart(2, "0")}`,
        relation: "requires",
        subject: `feature.mark-${String(i).padStart(2, "0")}`,
        ways: [["tool.mill"]],
        hardness: i === 1 ? "practice" : "physical",
      }),
    ),
    aClaim({
      id: "claim.mark-again",
      relation: "requires",
      subject: "feature.mark-07",
      ways: [["tool.mill"]],
      part: "part.back",
    }),
    dated("claim.dated-here", "feature.mark-07", "1820", { region: "region.here" }),
    dated("claim.dated-there", "feature.mark-07", "1790", { region: "region.there" }),
    dated("claim.mark-01-late", "feature.mark-01", "1850"),
    aClaim({
      id: "claim.mill",
      relation: "requires",
      subject: "tool.mill",
      ways: [["tool.wheel"]],
      closed: false,
    }),
    dated("claim.mill-here", "tool.mill", "1780", { region: "region.here" }),
    dated("claim.wheel", "tool.wheel", "1200"),
    aClaim({
      id: "claim.board",
      relation: "requires",
      subject: "material.board",
      ways: [["feature.mark-03"]],
    }),
    aClaim({ id: "claim.mill-plain", relation: "typical of", subject: "tool.mill", object: "style.plain" }),
    aClaim({
      id: "claim.mark-plain",
      relation: "typical of",
      subject: "feature.mark-01",
      object: "style.plain",
    }),
    aClaim({
      id: "claim.mill-gilded",
      relation: "void when",
      of: "claim.mill-here",
      condition: "feature.gesso",
    }),
    aClaim({
      id: "claim.refused",
      relation: "typical of",
      subject: "tool.mill",
      object: "form.chest",
      status: "rejected",
    }),
  ].map((after) => ({ kind: "claim" as const, after })),
];
