import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Term } from "#server/domain/term.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const saw = sawGraph.find((edit) => edit.kind === "term" && edit.after?.id === "tool.circular-saw");
const before = saw?.after as Term;
/** The saw gets another label in the second revision. */
const renamed: Change = [{ kind: "term", before, after: { ...before, label: "round saw" } }];

describe("revisions", () => {
  it("are listed newest first, chained by their hashes", async () => {
    const { ask } = await openApi([sawGraph, renamed]);
    const { data } = await ask(`{
      revision { number hash }
      revisions { totalCount edges { node { number at by message hash previous edits } } }
    }`);
    const [second, first] = data.revisions.edges.map((edge: { node: unknown }) => edge.node);
    expect(data.revision).toEqual({ number: 2, hash: second.hash });
    expect(first).toMatchObject({ number: 1, by: "test", edits: sawGraph.length, previous: "0".repeat(64) });
    expect(second).toMatchObject({ number: 2, edits: 1, previous: first.hash });
  });

  it("are none while the graph is empty", async () => {
    const { ask } = await openApi([]);
    const { data, errors } = await ask(
      "{ revision { number } revisions { totalCount } terms { totalCount } }",
    );
    expect(errors).toEqual([]);
    expect(data).toEqual({ revision: null, revisions: { totalCount: 0 }, terms: { totalCount: 0 } });
  });

  it("[A4] what is reached from a thing read on a revision is read on that revision", async () => {
    const { ask } = await openApi([sawGraph, renamed]);
    const { data } = await ask(`{
      old: claim(id: "claim.marks", revision: 1) { says ways { terms { label } } subject { claims { edges { node { ways { terms { label } } } } } } }
      new: claim(id: "claim.marks") { says ways { terms { label } } }
      terms(kinds: [TOOL], revision: 1) { edges { node { label } } }
    }`);
    const old = [{ terms: [{ label: "circular saw" }] }];
    expect(data.old.ways).toEqual(old);
    expect(data.old.says).toContain("circular saw");
    expect(data.old.subject.claims.edges[0].node.ways).toEqual(old);
    expect(data.new.ways).toEqual([{ terms: [{ label: "round saw" }] }]);
    expect(data.new.says).toContain("round saw");
    expect(data.terms.edges).toEqual([{ node: { label: "circular saw" } }]);
  });

  it.each([3, -1])("[A4] there is none of number %i, and that is said", async (revision) => {
    const { ask } = await openApi([sawGraph, renamed]);
    const { data, errors } = await ask(
      'query ($revision: Int) { term(id: "tool.circular-saw", revision: $revision) { label } }',
      { revision },
    );
    expect(data).toEqual({ term: null });
    expect(errors).toMatchObject([
      { message: expect.stringContaining("from 0 to 2"), extensions: { code: "UNKNOWN_REVISION" } },
    ]);
  });

  it("[A4] a thing that came later is not there yet", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask('{ term(id: "tool.circular-saw", revision: 0) { label } }');
    expect({ data, errors }).toEqual({ data: { term: null }, errors: [] });
  });
});
