import { describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Term } from "#server/domain/term.ts";
import { replacing, withdrawing } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const thing = (name: string) => sawGraph.find((edit) => edit.after?.id === name)?.after;
const claim = thing("claim.saw") as Claim;
const tool = thing("tool.circular-saw") as Term;
const later = { ...claim, when: "1795", strength: "firm" } as Claim;
const roundSaw = { ...tool, label: "round saw" };

/** The saw dated otherwise, then called otherwise, then its claim withdrawn. */
const changes: readonly Change[] = [
  sawGraph,
  replacing(claim, later),
  replacing(tool, roundSaw),
  withdrawing(later),
];

const HISTORY = `query ($id: ID!, $first: Int, $after: String) {
  history(id: $id, first: $first, after: $after) {
    totalCount pageInfo { hasNextPage endCursor }
    edges { node { revision { number by message } edit { does says differences { what before after } } } }
  }
}`;

describe("[A50] the history of one thing", () => {
  it("tells each edit newest first, by whom, why, and what differs, of a withdrawn claim too", async () => {
    const { ask } = await openApi(changes);
    const { data, errors } = await ask(HISTORY, { id: "claim.saw" });
    expect(errors).toEqual([]);
    const nodes = data.history.edges.map(({ node }: { node: unknown }) => node);
    expect(nodes).toEqual([
      {
        revision: { number: 4, by: "test", message: "test" },
        // Named as it was called when it last stood.
        edit: {
          does: "WITHDRAWN",
          says: expect.stringMatching(/^Round saw: introduced in England, 1795/),
          differences: [],
        },
      },
      {
        revision: { number: 2, by: "test", message: "test" },
        edit: {
          does: "CHANGED",
          says: expect.stringMatching(/^Circular saw: introduced in England, 1795/),
          differences: [
            { what: "date", before: "1790", after: "1795" },
            { what: "strength", before: "usual", after: "firm" },
          ],
        },
      },
      {
        revision: { number: 1, by: "test", message: "test" },
        edit: { does: "ADDED", says: expect.stringMatching(/1790\.$/), differences: [] },
      },
    ]);
    expect((await ask('{ claim(id: "claim.saw") { id } }')).data.claim).toBeNull();
  });

  it("[A3] comes page by page", async () => {
    const { ask } = await openApi(changes);
    const { data } = await ask(HISTORY, { id: "claim.saw", first: 2 });
    expect(data.history).toMatchObject({ totalCount: 3, pageInfo: { hasNextPage: true, endCursor: "2" } });
    const { data: rest } = await ask(HISTORY, { id: "claim.saw", first: 2, after: "2" });
    expect(rest.history.edges).toMatchObject([{ node: { revision: { number: 1 } } }]);
    const refused = await ask(HISTORY, { id: "claim.saw", first: 0 });
    expect(refused.errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
  });

  it.each(["claim.none", "examination.x", "", "no id at all"])("is empty for %j", async (id) => {
    const { ask } = await openApi(changes);
    const { data, errors } = await ask(HISTORY, { id });
    expect({ data, errors }).toMatchObject({ data: { history: { totalCount: 0, edges: [] } }, errors: [] });
  });
});

const SINCE = `query ($id: ID!, $revision: Int!) {
  changedSince(id: $id, revision: $revision) { does says differences { what before after } }
}`;

describe("[A51] what changed since a revision", () => {
  const since = async (id: string, revision: number) => {
    const { ask } = await openApi(changes.slice(0, 3));
    const { data, errors } = await ask(SINCE, { id, revision });
    expect(errors).toEqual([]);
    return data.changedSince;
  };

  it("is told as one edit from then to now", async () => {
    expect(await since("claim.saw", 1)).toMatchObject({
      does: "CHANGED",
      says: expect.stringMatching(/^Round saw/),
      differences: [{ what: "date" }, { what: "strength" }],
    });
    expect(await since("tool.circular-saw", 2)).toMatchObject({
      differences: [{ what: "name", before: "circular saw", after: "round saw" }],
    });
  });

  it("is nothing where it is as it was, where it is the newest, and for what never was", async () => {
    expect(await since("claim.saw", 2)).toBeNull();
    expect(await since("claim.saw", 3)).toBeNull();
    expect(await since("source.saw-book", 1)).toBeNull();
    expect(await since("claim.none", 1)).toBeNull();
  });

  it("tells what was added or withdrawn since", async () => {
    expect(await since("claim.saw", 0)).toMatchObject({ does: "ADDED", differences: [] });
    const { ask } = await openApi(changes);
    const { data } = await ask(SINCE, { id: "claim.saw", revision: 3 });
    expect(data.changedSince).toMatchObject({ does: "WITHDRAWN" });
  });

  it.each([4, -1])("[A4] is refused for revision %i, which there is not", async (revision) => {
    const { ask } = await openApi(changes.slice(0, 3));
    const { data, errors } = await ask(SINCE, { id: "claim.saw", revision });
    expect(data).toEqual({ changedSince: null });
    expect(errors).toMatchObject([{ extensions: { code: "UNKNOWN_REVISION" } }]);
  });

  it.each(["two", 1.5])("is refused for %j, which is no number of a revision", async (revision) => {
    const { ask } = await openApi(changes.slice(0, 3));
    const { errors } = await ask(SINCE, { id: "claim.saw", revision });
    expect(errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
  });
});

describe("[A50] a revision by its number", () => {
  it("is found, and is null where there is none", async () => {
    const { ask } = await openApi(changes);
    const { data } = await ask(
      "{ revision(number: 2) { number } newest: revision { number } none: revision(number: 9) { number } zero: revision(number: 0) { number } }",
    );
    expect(data).toEqual({ revision: { number: 2 }, newest: { number: 4 }, none: null, zero: null });
  });
});
