import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Change, Graph } from "#server/domain/change.ts";
import { applyChange, invertChange } from "#server/domain/change-graph.ts";
import { checkChange, checkGraph } from "#server/domain/check-graph.ts";
import type { Claim } from "#server/domain/claim.ts";
import { viewOfGraph } from "#server/domain/graph-view.ts";
import { namedTerms } from "#server/domain/named-terms.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { overlayChange } from "#server/domain/overlay-change.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Term } from "#server/domain/term.ts";
import { walkGraph } from "#server/stores/memory/walk-graph.ts";
import { anyClaims, FEATURES, WORLD } from "#tests/support/any-graph.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aGraph, alter, aSource, drop, put } from "#tests/support/build-graph.ts";

/** Exceptions of the claims with the first numbers, and exceptions of those. */
const anyExceptions = fc
  .array(fc.nat(9), { maxLength: 4 })
  .map((of) =>
    of.flatMap((claim, i): Claim[] => [
      aClaim({ id: `except.${i}`, relation: "void when", of: `claim.0${claim}`, condition: "feature.a" }),
      aClaim({ id: `except.${i}-of`, relation: "void when", of: `except.${i}`, condition: "feature.b" }),
    ]),
  );

const SPARE = aSource("source.spare");

/** A sound small graph. */
const anyGraph: fc.Arbitrary<Graph> = fc.tuple(anyClaims, anyExceptions).map(([claims, exceptions]) => {
  const ids = new Set<string>(claims.map(({ id }) => id));
  const kept = exceptions.filter((claim) => {
    if (claim.relation !== "void when" || !ids.has(claim.of)) return false;
    ids.add(claim.id);
    return true;
  });
  return aGraph(WORLD, [...claims, ...kept], [SPARE]);
});

interface Choice {
  readonly at: number;
  readonly what: "drop" | "alter" | "put";
  readonly claim: Claim;
  readonly label: string;
}
const anyChoices: fc.Arbitrary<readonly Choice[]> = fc.array(
  fc.record({
    at: fc.nat(),
    what: fc.constantFrom("drop", "alter", "put"),
    claim: anyClaims.filter((claims) => claims.length > 0).map((claims) => claims[0] as Claim),
    label: fc.constantFrom("another label", "a third label"),
  }),
  { maxLength: 6 },
);

/** A change that fits the graph: claims put, altered, set to rejected and dropped; terms put and renamed. */
function changeOf(graph: Graph, choices: readonly Choice[]): Change {
  const claims = [...graph.claims.values()];
  const edited = new Set<string>();
  const change = choices.flatMap(({ at, what, claim, label }, i): Change => {
    const standing = claims[at % Math.max(1, claims.length)];
    if (what === "put" || !standing) {
      const subject = { id: `tool.new-${i}`, kind: "tool", label };
      const named = at % 2 === 0 ? claim : { ...claim, subject: subject.id };
      return [put("term", subject), put("claim", { ...named, id: `claim.new-${i}` })];
    }
    if (edited.has(standing.id)) return [];
    edited.add(standing.id);
    if (what === "drop") return [drop("claim", standing)];
    const status = standing.status === "accepted" && at % 3 === 0 ? "rejected" : standing.status;
    return [alter("claim", standing, { ...standing, status, note: label })];
  });
  const renamed = WORLD[choices.length % WORLD.length] as Term;
  return [...change, alter("term", renamed, { ...renamed, label: "renamed" })];
}

const anyChangedGraph = fc
  .tuple(anyGraph, anyChoices)
  .map(([graph, choices]) => ({ graph, change: changeOf(graph, choices) }));

function applied(graph: Graph, change: Change): Graph {
  const after = applyChange(graph, change);
  if (isProblem(after)) throw new Error(after.message);
  return after;
}

describe("[G22][G23] changes", () => {
  it("and then their inverse give the graph that was before", () => {
    fc.assert(
      fc.property(anyChangedGraph, ({ graph, change }) => {
        const after = applied(graph, change);
        expect(after).not.toEqual(graph);
        expect(applied(after, invertChange(change))).toEqual(graph);
      }),
    );
  });

  it("inverted twice are themselves", () => {
    fc.assert(
      fc.property(anyChangedGraph, ({ change }) => {
        expect(invertChange(invertChange(change))).toEqual(change);
      }),
    );
  });

  it("leave the graph they are made on as it was", () => {
    fc.assert(
      fc.property(anyChangedGraph, ({ graph, change }) => {
        const before = structuredClone(graph);
        applied(graph, change);
        expect(graph).toEqual(before);
      }),
    );
  });

  it("made twice are stale, at the first edit", () => {
    fc.assert(
      fc.property(anyChangedGraph, ({ graph, change }) => {
        expect(applyChange(applied(graph, change), change)).toMatchObject({
          code: "STALE_CHANGE",
          path: [0],
        });
      }),
    );
  });

  it("of two parts are the same made in one", () => {
    fc.assert(
      fc.property(anyChangedGraph, fc.nat(), ({ graph, change }, at) => {
        const cut = at % (change.length + 1);
        expect(applied(applied(graph, change.slice(0, cut)), change.slice(cut))).toEqual(
          applied(graph, change),
        );
      }),
    );
  });

  it("[G22] whose before is not what stands are refused, for any thing and any field", () => {
    fc.assert(
      fc.property(anyChangedGraph, ({ graph, change }) => {
        const [last] = change.slice(-1);
        const stale = [
          ...change.slice(0, -1),
          alter("term", { ...last?.before, note: "not so" }, { ...last?.after }),
        ];
        expect(applyChange(graph, stale)).toMatchObject({ code: "STALE_CHANGE", path: [change.length - 1] });
      }),
    );
  });
});

it("[G14] checking the edits finds exactly whether the changed graph is sound", () => {
  let unsound = 0;
  fc.assert(
    fc.property(anyChangedGraph, ({ graph, change }) => {
      expect(checkGraph(graph)).toEqual([]);
      const found = checkChange(change, viewOfGraph(graph)).length > 0;
      if (found) unsound++;
      expect(found).toBe(checkGraph(applied(graph, change)).length > 0);
    }),
    { numRuns: 300 },
  );
  expect(unsound).toBeGreaterThan(10);
});

describe("[G24] a change laid over a neighbourhood", () => {
  const asks: readonly NeighbourhoodAsk[] = FEATURES.flatMap((feature) =>
    [0, 1, 4].map((maxDepth) => ({ seeds: [feature], regions: [], maxDepth })),
  );
  const touchesRequires = (change: Change): boolean =>
    change.some(
      (edit) =>
        edit.kind === "claim" && [edit.before, edit.after].some((claim) => claim?.relation === "requires"),
    );

  it("without `requires` is the neighbourhood of the changed graph", () => {
    let [laid, complete] = [0, 0];
    fc.assert(
      fc.property(anyChangedGraph, fc.constantFrom(...asks), ({ graph, change }, ask) => {
        if (touchesRequires(change) || checkChange(change, viewOfGraph(graph)).length > 0) return;
        laid++;
        const over = overlayChange(walkGraph(graph, 1, ask), change);
        const after = walkGraph(applied(graph, change), 1, ask);
        expect(over.claims).toEqual(after.claims);
        const known = new Set(over.terms.map(({ id }) => id));
        expect(over.terms).toEqual(after.terms.filter(({ id }) => known.has(id)));
        // A term named anew that nobody named before is for the store to fetch, with what is broader.
        const before = new Set(walkGraph(graph, 1, ask).terms.map(({ id }) => id));
        for (const edit of change) if (edit.kind === "term" && edit.after) before.add(edit.after.id);
        if (after.claims.flatMap(namedTerms).every((id) => before.has(id))) {
          complete++;
          expect(over.terms).toEqual(after.terms);
        }
      }),
      { numRuns: 600 },
    );
    expect(laid).toBeGreaterThan(100);
    expect(complete).toBeGreaterThan(50);
  });

  it("agrees on every claim whose subject was reached before and is reached after", () => {
    fc.assert(
      fc.property(anyChangedGraph, fc.constantFrom(...asks), ({ graph, change }, ask) => {
        if (checkChange(change, viewOfGraph(graph)).length > 0) return;
        const [before, after] = [walkGraph(graph, 1, ask), walkGraph(applied(graph, change), 1, ask)];
        const over = overlayChange(before, change);
        const inBoth = (claim: Claim): boolean =>
          "subject" in claim && before.depths.has(claim.subject) && after.depths.has(claim.subject);
        expect(over.claims.filter(inBoth)).toEqual(after.claims.filter(inBoth));
        expect(over.revision).toBe(before.revision);
      }),
      { numRuns: 300 },
    );
  });
});
