import { describe, expect, it } from "vitest";
import type { Edit, Graph } from "#server/domain/change.ts";
import { applyChange } from "#server/domain/change-graph.ts";
import { checkChange, checkGraph } from "#server/domain/check-graph.ts";
import { viewOfGraph } from "#server/domain/graph-view.ts";
import { isProblem } from "#server/domain/problem.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { aGraph, alter, aSource, drop, put } from "#tests/support/build-graph.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";

const terms = [
  aTerm("feature.mark"),
  aTerm("feature.gesso"),
  aTerm("tool.saw", "tool"),
  aTerm("tool.band-saw", "tool", "tool.saw"),
  aTerm("style.a", "style"),
  aTerm("form.chest", "form"),
  aTerm("part.drawer", "part"),
  aTerm("region.world", "region"),
  aTerm("region.england", "region", "region.world"),
  aTerm("maker.a", "maker"),
];
const requires = aClaim({ id: "c1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] });
const introduced = aClaim({
  ...{ id: "c2", relation: "introduced", subject: "tool.saw", when: "1790", region: "region.england" },
  citations: [{ basis: "published", source: "source.a", locator: "p. 1" }] as never,
});
const sign = aClaim({ id: "c3", relation: "indicates", subject: "feature.mark", states: ["later"] });
const exception = aClaim({ id: "c4", relation: "void when", of: "c3", condition: "feature.gesso" });
const graph = aGraph(terms, [requires, introduced, sign, exception], [aSource("source.a")]);

const found = (edits: readonly Edit[], on: Graph = graph): readonly [string, string][] =>
  checkChange(edits, viewOfGraph(on)).map(({ code, path }) => [code, path.join(".")]);
const putClaim = (sketch: ClaimSketch): readonly [string, string][] => found([put("claim", aClaim(sketch))]);

it("[G21] a sound graph has no problems", () => {
  expect(checkGraph(graph)).toEqual([]);
});

describe("[G3] what is named exists", () => {
  it.each<[ClaimSketch, string, string]>([
    [{ id: "n", relation: "current", subject: "style.b", when: "1750" }, "UNKNOWN_TERM", "0.after.subject"],
    [
      { id: "n", relation: "introduced", subject: "tool.saw", when: "1750", region: "region.x" },
      "UNKNOWN_TERM",
      "0.after.scope.region",
    ],
    [
      { id: "n", relation: "requires", subject: "feature.mark", ways: [["tool.saw"], ["tool.x"]] },
      "UNKNOWN_TERM",
      "0.after.ways.1.0",
    ],
    [
      { id: "n", relation: "typical of", subject: "feature.mark", object: "style.x" },
      "UNKNOWN_TERM",
      "0.after.object",
    ],
    [{ id: "n", relation: "void when", of: "c9", condition: "feature.gesso" }, "UNKNOWN_CLAIM", "0.after.of"],
    [
      { id: "n", relation: "void when", of: "c3", condition: "feature.x" },
      "UNKNOWN_TERM",
      "0.after.condition",
    ],
    [
      {
        ...{ id: "n", relation: "introduced", subject: "tool.saw", when: "1750" },
        citations: [{ basis: "published", source: "source.b", locator: "p. 1" }] as never,
      },
      "UNKNOWN_SOURCE",
      "0.after.citations.0.source",
    ],
  ])("%j", (sketch, code, path) => {
    expect(putClaim(sketch)).toEqual([[code, path]]);
  });

  it("in terms and in documented pieces too", () => {
    expect(found([put("term", aTerm("tool.jig-saw", "tool", "tool.none"))])).toEqual([
      ["UNKNOWN_TERM", "0.after.broader"],
    ]);
    const piece = { form: "form.chest", region: "region.x", made: "1760-80", features: [] };
    expect(
      found([put("source", aSource("source.p", { kind: "documented piece", piece: piece as never }))]),
    ).toEqual([["UNREADABLE_DATING", "0.after.piece.made"]]);
    const dated = { ...piece, made: "1760/1780", features: [{ feature: "feature.x", part: "part.drawer" }] };
    expect(
      found([put("source", aSource("source.p", { kind: "documented piece", piece: dated as never }))]),
    ).toEqual([
      ["UNKNOWN_TERM", "0.after.piece.region"],
      ["UNKNOWN_TERM", "0.after.piece.features.0.feature"],
    ]);
  });
});

describe("[G4] what is named is of the right kind", () => {
  it.each<[ClaimSketch, string]>([
    [
      { id: "n", relation: "introduced", subject: "tool.saw", when: "1750", region: "form.chest" },
      "0.after.scope.region",
    ],
    [
      { id: "n", relation: "introduced", subject: "tool.saw", when: "1750", form: "part.drawer" },
      "0.after.scope.form",
    ],
    [
      { id: "n", relation: "introduced", subject: "tool.saw", when: "1750", part: "form.chest" },
      "0.after.scope.part",
    ],
    [{ id: "n", relation: "introduced", subject: "region.world", when: "1750" }, "0.after.subject"],
    [{ id: "n", relation: "active", subject: "style.a", when: "1750/1760" }, "0.after.subject"],
    [{ id: "n", relation: "current", subject: "maker.a", when: "1750/1760" }, "0.after.subject"],
    [{ id: "n", relation: "indicates", subject: "tool.saw", states: ["later"] }, "0.after.subject"],
    [{ id: "n", relation: "void when", of: "c3", condition: "style.a" }, "0.after.condition"],
    [
      { id: "n", relation: "confined to", subject: "feature.mark", regions: ["style.a"] },
      "0.after.regions.0",
    ],
    [
      {
        id: "n",
        relation: "spread to",
        subject: "tool.saw",
        from: "region.england",
        to: "form.chest",
        years: [1, 2],
      },
      "0.after.to",
    ],
    [
      { id: "n", relation: "requires", subject: "feature.mark", ways: [["region.world"]] },
      "0.after.ways.0.0",
    ],
  ])("%j", (sketch, path) => {
    expect(putClaim(sketch)).toEqual([["WRONG_KIND_OF_TERM", path]]);
  });

  it("[G1] a broader term is of the same kind", () => {
    expect(found([put("term", aTerm("style.b", "style", "form.chest"))])).toEqual([
      ["WRONG_KIND_OF_TERM", "0.after.broader"],
    ]);
  });
});

describe("changes", () => {
  const saw = terms[2] as object;

  it("[G15] an edit may name what another edit of the change puts", () => {
    const tool = aTerm("tool.plane", "tool");
    const claim = aClaim({ id: "n", relation: "introduced", subject: "tool.plane", when: "1750" });
    expect(found([put("claim", claim)])).toEqual([["UNKNOWN_TERM", "0.after.subject"]]);
    expect(found([put("claim", claim), put("term", tool)])).toEqual([]);
  });

  it("[G16] what is still named cannot be withdrawn, unless what names it goes too", () => {
    expect(found([drop("source", aSource("source.a"))])).toEqual([["UNKNOWN_SOURCE", "0.before"]]);
    expect(found([drop("source", aSource("source.a")), drop("claim", introduced)])).toEqual([]);
    expect(found([drop("claim", sign)])).toEqual([["UNKNOWN_CLAIM", "0.before"]]);
    const [refused] = checkChange([drop("term", saw)], viewOfGraph(graph));
    expect(refused?.code).toBe("UNKNOWN_TERM");
    expect(refused?.message).toContain("the term tool.band-saw names it");
    expect(found([drop("term", aTerm("maker.a", "maker"))])).toEqual([]);
  });

  it("[G16] an edit that takes the name away lets the named be withdrawn", () => {
    const other = aClaim({ id: "c4", relation: "void when", of: "c1", condition: "feature.gesso" });
    expect(found([alter("claim", exception, other), drop("claim", sign)])).toEqual([]);
  });

  it("[G17] a term keeps its kind", () => {
    expect(found([alter("term", saw, aTerm("tool.saw", "practice"))])).toEqual([
      ["WRONG_KIND_OF_TERM", "0.after.kind"],
    ]);
  });

  it("[G20] a thing is edited once", () => {
    expect(found([put("term", aTerm("tool.x", "tool")), put("term", aTerm("tool.x", "tool"))])).toEqual([
      ["DUPLICATE_ID", "1"],
    ]);
  });

  it("[G2] a claim that is no claim is refused with its own problems, at their place in the change", () => {
    const uncited = { ...introduced, citations: [] };
    expect(found([put("term", aTerm("tool.x", "tool")), alter("claim", introduced, uncited)])).toEqual([
      ["UNCITED_CLAIM", "1.after.citations"],
    ]);
  });

  it("[G1] a term without a label or of no kind is refused, and a source without a title", () => {
    expect(found([put("term", { ...aTerm("tool.x", "tool"), label: " " })])).toEqual([
      ["WRONG_FORMAT", "0.after.label"],
    ]);
    expect(found([put("term", { ...aTerm("tool.x", "tool"), kind: "saw" })])).toEqual([
      ["WRONG_FORMAT", "0.after.kind"],
    ]);
    expect(found([put("source", { ...aSource("s"), csl: { id: "s", type: "book" } })])).toEqual([
      ["WRONG_FORMAT", "0.after.csl.title"],
    ]);
  });
});

describe("[G18] broader terms", () => {
  it("make no cycle, of one or of more", () => {
    expect(found([put("term", aTerm("tool.x", "tool", "tool.x"))])).toEqual([
      ["CYCLE_OF_BROADER_TERMS", "0.after.broader"],
    ]);
    const [refused, ...more] = checkChange(
      [alter("term", terms[2] as object, aTerm("tool.saw", "tool", "tool.band-saw"))],
      viewOfGraph(graph),
    );
    expect(more).toEqual([]);
    expect(refused?.code).toBe("CYCLE_OF_BROADER_TERMS");
    expect(refused?.message).toContain("tool.band-saw, tool.saw");
  });

  it("below a cycle are not blamed for it", () => {
    const loop = [
      aTerm("tool.x", "tool", "tool.y"),
      aTerm("tool.y", "tool", "tool.x"),
      aTerm("tool.z", "tool", "tool.x"),
    ];
    expect(checkGraph(aGraph(loop)).map(({ path }) => path.join("."))).toEqual([
      "terms.tool.x.broader",
      "terms.tool.y.broader",
    ]);
  });
});

describe("[G19] exceptions", () => {
  const of = (id: string, claim: string) =>
    aClaim({ id, relation: "void when", of: claim, condition: "feature.gesso" });

  it("of exceptions are allowed", () => {
    expect(found([put("claim", of("c5", "c4"))])).toEqual([]);
  });

  it("of themselves are not, by whatever way", () => {
    expect(found([put("claim", of("c5", "c5"))])).toEqual([["CYCLE_OF_EXCEPTIONS", "0.after.of"]]);
    expect(found([put("claim", of("c5", "c4")), alter("claim", exception, of("c4", "c5"))])).toEqual([
      ["CYCLE_OF_EXCEPTIONS", "0.after.of"],
      ["CYCLE_OF_EXCEPTIONS", "1.after.of"],
    ]);
  });
});

it("[G14] checking a change asks only for what the change touches", () => {
  const view = viewOfGraph(graph);
  const asked: string[] = [];
  const noting =
    <Thing>(find: (id: string) => Thing) =>
    (id: string): Thing => {
      asked.push(id);
      return find(id);
    };
  const spied = {
    findTerm: noting(view.findTerm),
    findClaim: noting(view.findClaim),
    findSource: noting(view.findSource),
    namersOf: () => {
      throw new Error("nothing is withdrawn");
    },
  };
  const claim = aClaim({
    id: "n",
    relation: "introduced",
    subject: "tool.saw",
    when: "1750",
    region: "region.england",
  });
  expect(checkChange([put("claim", claim)], spied)).toEqual([]);
  expect(asked.toSorted()).toEqual(["region.england", "tool.saw"]);
});

it("[G14] a sound change of a sound graph gives a sound graph", () => {
  const change = [
    put("term", aTerm("tool.plane", "tool")),
    put("claim", aClaim({ id: "n", relation: "attested", subject: "tool.plane", when: "1700" })),
    drop("claim", exception),
  ];
  expect(found(change)).toEqual([]);
  const after = applyChange(graph, change);
  if (isProblem(after)) throw new Error(after.message);
  expect(checkGraph(after)).toEqual([]);
});

it("every problem is a sentence with something to do", () => {
  const broken = aGraph(
    [aTerm("tool.x", "tool", "tool.x"), aTerm("style.b", "style", "tool.x"), { ...aTerm("a b"), label: "" }],
    [
      aClaim({ id: "c1", relation: "introduced", subject: "tool.none", when: "c.1750" }),
      aClaim({ id: "c2", relation: "current", subject: "tool.none", when: "1750" }),
      aClaim({ id: "c3", relation: "void when", of: "c3", condition: "tool.x" }),
    ],
  );
  const problems = checkGraph(broken);
  expect(new Set(problems.map(({ code }) => code)).size).toBeGreaterThanOrEqual(5);
  for (const { message } of problems)
    expect(message).toMatch(/^[A-Z].*(;|\bmust be\b|Write|make|use).*[.?]$/);
});
