import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Term } from "#server/domain/term.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { candidatesOf } from "#server/reasoning/looks/candidates.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTerm, aTree, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type PieceSketch } from "#tests/support/build-piece.ts";

const feature = (id: string, parts: readonly string[], more: object = {}): Term =>
  ({ ...aTerm(id), parts, ...more }) as Term;
const mistakenFor = (term: string) => ({
  looking: {
    ...{ how: "Look.", move: "nothing", basis: "common practice" },
    mistakenFor: [{ what: term, term, apart: "Look again." }],
  },
});

const features: readonly Term[] = [
  feature("feature.saw-mark", ["part.back"]),
  feature("feature.round-saw-mark", ["part.back"], { broader: "feature.saw-mark" }),
  feature("feature.straight-saw-mark", ["part.back"], { broader: "feature.saw-mark" }),
  feature("feature.plane-mark", ["part.back"], mistakenFor("feature.round-saw-mark")),
  feature("feature.hidden-wood", ["part.back"]),
  feature("feature.hidden-wood-oak", ["part.back"], { broader: "feature.hidden-wood" }),
  feature("feature.hidden-wood-pine", ["part.back"], { broader: "feature.hidden-wood" }),
  feature("feature.nailed", ["part.case-part"]),
  feature("feature.splat-pierced", ["part.whole", "part.splat"]),
  feature("feature.six-legs", ["part.whole"]),
  feature("feature.three-drawers", ["part.whole"]),
];
const terms: readonly Term[] = [
  ...features,
  ...aTree("part", {
    "part.case-part": { "part.back": {}, "part.side": {} },
    "part.whole": {},
    "part.splat": {},
  }),
  ...aTree("form", { "form.case": { "form.chest": {} }, "form.table": {} }),
];
const claims = [
  aClaim({ id: "c1", relation: "introduced", subject: "feature.six-legs", form: "form.table", when: "1750" }),
  aClaim({
    id: "c2",
    relation: "introduced",
    subject: "feature.three-drawers",
    form: "form.case",
    when: "1700",
  }),
];
const graph = knowGraph(neighbourhoodOf(terms, claims), ASSUMED);
const parts = [
  { id: "back", kind: "part.back" },
  { id: "all", kind: "part.whole" },
];

const found = (observations: PieceSketch["observations"] = []) => {
  const piece = aPiece({ form: "form.chest", parts, observations });
  const { open, ...counts } = candidatesOf(readSubject(piece, graph, ASSUMED), features);
  return { names: open.map(({ part, feature: of }) => `${part}: ${of.replace("feature.", "")}`), ...counts };
};
const onBack = (name: string, more: object = {}) => ({
  id: "o",
  part: "back",
  feature: `feature.${name}`,
  ...more,
});

describe("what could be looked for", () => {
  it("[N1] is what belongs to the kind of a part, or to a broader kind", () => {
    const { names, answered } = found();
    expect(names).toContain("back: round-saw-mark");
    expect(names).toContain("back: nailed");
    expect(names).toEqual([...names].sort());
    expect(answered).toBe(0);
  });

  it("[N1] is not what is recorded, nor anything broader, but still the others of its kind", () => {
    const { names, answered } = found([onBack("round-saw-mark")]);
    expect(names).not.toContain("back: round-saw-mark");
    expect(names).not.toContain("back: saw-mark");
    expect(names).toContain("back: straight-saw-mark");
    expect(answered).toBe(3);
  });

  it("[N1] is nothing narrower than what is absent", () => {
    const { names } = found([onBack("saw-mark", { seen: "absent" })]);
    expect(names.filter((name) => name.endsWith("saw-mark"))).toEqual([]);
  });

  it("[N1] is no look-alike of what was surely seen; one of what was perhaps seen still is", () => {
    expect(found([onBack("round-saw-mark")]).names).not.toContain("back: plane-mark");
    expect(found([onBack("plane-mark")]).names).not.toContain("back: round-saw-mark");
    expect(found([onBack("round-saw-mark", { sureness: "possible" })]).names).toContain("back: plane-mark");
  });

  it("[N1] is no other wood where the wood was seen; where one was looked for and is absent, the others are", () => {
    expect(found([onBack("hidden-wood-oak")]).names).not.toContain("back: hidden-wood-pine");
    expect(found([onBack("hidden-wood-oak", { seen: "absent" })]).names).toContain("back: hidden-wood-pine");
  });

  it("[N2] is nothing of parts that the piece has not got, nor of other forms alone", () => {
    const { names, notOfPiece } = found();
    expect(names).not.toContain("all: splat-pierced");
    expect(names).not.toContain("all: six-legs");
    expect(names).toContain("all: three-drawers");
    expect(notOfPiece).toBe(2);
  });
});
