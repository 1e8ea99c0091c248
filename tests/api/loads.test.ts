import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Term } from "#server/domain/term.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { SAW_BOOK, sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

/** A graph of `n` features that need tools, each claim with its own exception. */
function wideGraph(n: number): Change {
  const numbers = Array.from({ length: n }, (_, i) => String(i).padStart(3, "0"));
  const terms = ["feature", "tool"].flatMap((kind) =>
    numbers.map((i) => ({ id: `${kind}.t${i}`, kind, label: `${kind} ${i}` }) as unknown as Term),
  );
  return [
    ...terms.map((after) => ({ kind: "term" as const, after })),
    { kind: "source", after: SAW_BOOK },
    ...numbers
      .flatMap((i) => [
        aClaim({
          id: `claim.c${i}`,
          relation: "requires",
          subject: `feature.t${i}`,
          ways: [[`tool.t${i}`]],
          citations: [{ basis: "published", source: SAW_BOOK.id, locator: `p. ${i}` }],
        }),
        aClaim({ id: `claim.x${i}`, relation: "void when", of: `claim.c${i}`, condition: `feature.t${i}` }),
      ])
      .map((after) => ({ kind: "claim" as const, after })),
  ];
}

const CLAIMS = `query ($first: Int!) {
  claims(relations: [REQUIRES], first: $first) { edges { node {
    says subject { label broader { label } } ways { terms { label } }
    exceptions { says objects { label } of { says } } citations { source { text } }
  } } }
}`;

describe("calls of the store", () => {
  it("[A9] are as many for a hundred claims as for two", async () => {
    const { ask } = await openApi([wideGraph(120)]);
    const few = await ask(CLAIMS, { first: 2 });
    const many = await ask(CLAIMS, { first: 100 });
    expect(many.errors).toEqual([]);
    expect(many.data.claims.edges).toHaveLength(100);
    expect(many.data.claims.edges[99].node.exceptions).toHaveLength(1);
    expect(many.calls.toSorted()).toEqual(few.calls.toSorted());
    expect(few.calls.length).toBeLessThanOrEqual(6);
  });

  it("[A9] read each term of a page once, by whatever way it is named", async () => {
    const { ask } = await openApi([wideGraph(3)]);
    const { calls } = await ask(`{
      a: term(id: "tool.t000") { label } b: term(id: "tool.t001") { label } c: term(id: "tool.t000") { id }
      claim(id: "claim.c002") { id }
    }`);
    expect(calls.toSorted()).toEqual(["claims", "terms"]);
  });

  it("[A9] are few for an examination with all that its report names", async () => {
    const { ask } = await openApi([sawGraph]);
    const { calls, errors, data } = await ask(
      `query ($piece: PieceInput!) { examine(piece: $piece) { ... on Examined {
        report words { headline }
        terms { label broader { label } parts { label } }
        claims { says subject { label } ways { terms { label } } exceptions { says } citations { source { text } } }
      } } }`,
      { piece: sawnChest },
    );
    expect(errors).toEqual([]);
    expect(data.examine.claims.length).toBeGreaterThan(1);
    expect(calls.slice(0, 3)).toEqual(["newestRevision", "terms", "neighbourhood"]);
    expect(calls.length).toBeLessThanOrEqual(8);
  });

  it("[A9] for exceptions go on where there are more than a page of them", async () => {
    const { ask } = await openApi([wideGraph(150), moreExceptions(150)]);
    const { data } = await ask(
      "{ claims(relations: [REQUIRES], first: 200) { edges { node { exceptions { id } } } } }",
    );
    const counts = data.claims.edges.map(
      (edge: { node: { exceptions: unknown[] } }) => edge.node.exceptions.length,
    );
    expect(counts).toEqual(Array.from({ length: 150 }, () => 2));
  });
});

/** A second exception for each claim. */
const moreExceptions = (n: number): Change =>
  Array.from({ length: n }, (_, i) => String(i).padStart(3, "0")).map((i) => ({
    kind: "claim",
    after: aClaim({ id: `claim.y${i}`, relation: "void when", of: `claim.c${i}`, condition: "feature.t000" }),
  }));
