import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Graph } from "#server/domain/change.ts";
import { applyChange, invertChange } from "#server/domain/change-graph.ts";
import { checkGraph } from "#server/domain/check-graph.ts";
import { standingIn } from "#server/domain/graph-view.ts";
import { id } from "#server/domain/ids.ts";
import { namesOf } from "#server/domain/names-of.ts";
import { isProblem } from "#server/domain/problem.ts";
import { linkOf, mergeTerms } from "#server/domain/proposals/merge-terms.ts";
import type { Term } from "#server/domain/term.ts";
import { anyClaims, FEATURES, WORLD } from "#tests/support/any-graph.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aGraph } from "#tests/support/build-graph.ts";
import { findSketch } from "#tests/support/examine-sketch.ts";

const anyGraph: fc.Arbitrary<Graph> = anyClaims.map((claims) => aGraph(WORLD, claims, []));
const PAIRS = [
  ["feature.a", "feature.b"],
  ["tool.a", "tool.b"],
  ["region.south", "region.north-east"],
  ["part.drawer", "part.drawer-bottom"],
  ["form.chest", "form.case"],
] as const;

function merged(graph: Graph, [into, from]: readonly [string, string]) {
  const [kept, gone] = [graph.terms.get(into), graph.terms.get(from)] as [Term, Term];
  const namers = standingIn(graph).filter((standing) => namesOf(standing).some((name) => name.id === from));
  const change = mergeTerms(kept, gone, namers);
  if (isProblem(change)) throw new Error(change.message);
  const after = applyChange(graph, change);
  if (isProblem(after)) throw new Error(after.message);
  return { change, after, kept, gone };
}

describe("two terms that are merged", () => {
  it("[J44] lose nothing: every id answers, every citation and label is kept, and the graph is sound", () => {
    fc.assert(
      fc.property(anyGraph, fc.constantFrom(...PAIRS), (graph, pair) => {
        const { after, gone } = merged(graph, pair);
        expect(checkGraph(after)).toEqual([]);
        for (const term of graph.terms.keys()) expect(after.terms.has(term)).toBe(true);
        for (const claim of graph.claims.values())
          expect(after.claims.get(claim.id)).toMatchObject({
            relation: claim.relation,
            citations: claim.citations,
            status: claim.status,
          });
        const now = after.terms.get(pair[0]) as Term;
        for (const label of [gone.label, ...(gone.otherLabels ?? [])])
          expect([now.label, ...(now.otherLabels ?? [])]).toContain(label);
        expect(after.terms.get(pair[1])).toMatchObject({
          ...{ label: gone.label, broader: pair[0], merged: true },
        });
      }),
    );
  });

  it("[J44] what named the one names the other, but for what ties the two", () => {
    fc.assert(
      fc.property(anyGraph, fc.constantFrom(...PAIRS), (graph, pair) => {
        const { after } = merged(graph, pair);
        for (const standing of standingIn(after)) {
          const named = namesOf(standing).map((name) => name.id);
          if (named.includes(pair[1] as never) && standing.kind === "claim") expect(named).toContain(pair[0]);
          if (standing.kind === "term") expect(named).not.toContain(pair[1]);
        }
      }),
    );
  });

  it("[J44] can be taken apart again", () => {
    fc.assert(
      fc.property(anyGraph, fc.constantFrom(...PAIRS), (graph, pair) => {
        const { change, after } = merged(graph, pair);
        expect(applyChange(after, invertChange(change))).toEqual(graph);
      }),
    );
  });

  it("[J44] bind a piece on which the retired one was seen by the same years", () => {
    const claims = [
      aClaim({ id: "claim.0", relation: "introduced", subject: FEATURES[0] as string, when: "1800" }),
      aClaim({ id: "claim.1", relation: "introduced", subject: FEATURES[1] as string, when: "1850" }),
    ];
    const { after } = merged(aGraph(WORLD, claims, []), ["feature.a", "feature.b"]);
    expect(after.claims.get(linkOf({ id: id("feature.b") }))).toMatchObject({ ways: [["feature.a"]] });
    const found = findSketch([...after.claims.values()] as never, { feature: "feature.b" }, [
      ...after.terms.values(),
    ]);
    expect(found.label).toBe("contradictory");
  });

  it("[J44] are of one kind, and two", () => {
    const graph = aGraph(WORLD, [], []);
    const [a, tool] = ["feature.a", "tool.a"].map((one) => graph.terms.get(one)) as [Term, Term];
    expect(mergeTerms(a, tool, [])).toMatchObject({ code: "WRONG_KIND_OF_TERM", path: ["into"] });
    expect(mergeTerms(a, a, [])).toMatchObject({ code: "WRONG_FORMAT", path: ["into"] });
  });
});
