import { beforeEach, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const MAKE = `mutation ($input: ProposalInput!, $open: Boolean!) {
  made: makeProposal(input: $input, open: $open) {
    ... on ProposalChanged { proposal { id version state title by { id name } isMine base } }
    ... on Refused { problems { code message path } }
  }
}`;
const DECIDE = `mutation ($id: ID!, $on: Int!, $verdict: Verdict!, $reason: String!) {
  made: decideOnProposal(id: $id, expectedVersion: $on, verdict: $verdict, reason: $reason) {
    ... on ProposalChanged { stillNeeded proposal { id version state revision reviews { verdict reason } } }
    ... on Refused { problems { code message path } }
  }
}`;

describe("proposals by the API", () => {
  let api: Awaited<ReturnType<typeof openApi>>;
  beforeEach(async () => {
    api = await openApi([sawGraph, adding(aTerm("tool.pit-saw"))]);
  });
  const noted = replacing(aTerm("tool.pit-saw"), aTerm("tool.pit-saw", { note: "Drawn by two." }));
  const asked = (change: unknown, rest = {}) => ({
    input: { kind: "CORRECTION", title: "A note", why: "Nobody could tell.", change, ...rest },
    open: true,
  });
  const make = async (change: unknown = noted, rest = {}) => {
    const { data, errors } = await api.ask(MAKE, asked(change, rest));
    expect(errors).toEqual([]);
    return data.made;
  };

  it("[J3] is made on the newest revision, and shows what is beside what would be", async () => {
    const { proposal } = await make();
    expect(proposal).toMatchObject({
      version: 1,
      state: "OPEN",
      base: 2,
      isMine: true,
      by: { id: "local", name: null },
    });
    const { data } = await api.ask(
      `query ($id: ID!) { proposal(id: $id) {
        unfit { code } change editCount
        edits { of kind does before after rows { what before after differs } }
        may { step refused }
      } }`,
      { id: proposal.id },
    );
    expect(data.proposal).toMatchObject({ unfit: null, editCount: 1, change: noted });
    expect(data.proposal.edits).toEqual([
      {
        ...{ of: "tool.pit-saw", kind: "term", does: "CHANGED", before: "pit saw", after: "pit saw" },
        rows: expect.arrayContaining([
          { what: "note", before: null, after: "Drawn by two.", differs: true },
          expect.objectContaining({ what: "kind", differs: false }),
        ]),
      },
    ]);
    const refused = Object.fromEntries(
      data.proposal.may.map(({ step, refused: why }: { step: string; refused: string | null }) => [
        step,
        why,
      ]),
    );
    expect(refused).toMatchObject({ ACCEPT: null, DECLINE: null, WITHDRAW: null });
    expect(refused["OPEN"]).toMatch(/cannot open a proposal that is open/);
  });

  it("[J3] is refused edit by edit where it is not of the format, and as a whole where the graph would refuse it", async () => {
    const unreadable: unknown = [
      { kind: "term", after: { id: "tool.adze", kind: "hammer", label: "adze" } },
      { kind: "claim" },
      ...adding(aTerm("tool.adze")),
      ...adding(aTerm("tool.adze")),
    ];
    const { problems } = await make(unreadable);
    expect(
      problems.map(({ code, path }: { code: string; path: string[] }) => [code, path.join("/")]),
    ).toEqual([
      ["WRONG_FORMAT", "change/0/after/kind"],
      ["WRONG_FORMAT", "change/1"],
      ["DUPLICATE_ID", "change/3"],
    ]);
    expect(problems[0].message).toMatch(/^Edit 1: "kind" has to be one of /);
    expect((await make(adding(aTerm("tool.pit-saw")))).problems).toMatchObject([{ code: "STALE_CHANGE" }]);
    expect((await make("x")).problems).toMatchObject([{ code: "WRONG_FORMAT", path: ["change"] }]);
    expect((await make(noted, { base: 9 })).problems).toMatchObject([{ code: "UNKNOWN_REVISION" }]);
  });

  it("[J3] that is larger than can be decided on is refused in words", async () => {
    const many: Change = Array.from({ length: 501 }, (_, i) => adding(aTerm(`tool.t${i}`))).flat();
    expect((await make(many)).problems).toMatchObject([{ code: "TOO_LARGE", path: ["change"] }]);
    expect((await make(noted, { title: "x".repeat(201) })).problems).toMatchObject([{ code: "TOO_LARGE" }]);
    const deep = { ...aTerm("tool.adze"), note: JSON.parse(`${"[".repeat(5000)}${"]".repeat(5000)}`) };
    expect((await make([{ kind: "term", after: deep }])).problems).toMatchObject([{ code: "WRONG_FORMAT" }]);
  });

  it("[J4] tells which stored pieces would come to something else, and which disagreements would come", async () => {
    const claim = aClaim({
      id: "claim.earlier",
      relation: "attested",
      subject: "tool.circular-saw",
      region: "region.england",
      when: "1650",
    });
    const { proposal } = await make(adding(claim), { kind: "CLAIM" });
    const { data, errors } = await api.ask(
      `query ($id: ID!) { proposal(id: $id) { impact {
        revision looked left movedCount moved { id } reviewersNeeded created { id says } settled { id }
      } } }`,
      { id: proposal.id },
    );
    expect(errors).toEqual([]);
    expect(data.proposal.impact).toMatchObject({
      revision: 2,
      left: 0,
      movedCount: 0,
      reviewersNeeded: 1,
      settled: [],
    });
    expect(data.proposal.impact.created).toMatchObject([
      { says: expect.stringContaining("on record in England 140 years before") },
    ]);
  });

  it("[J2] is accepted into a revision, and found by its state", async () => {
    const { proposal } = await make();
    const { data } = await api.ask(DECIDE, { id: proposal.id, on: 1, verdict: "ACCEPT", reason: "" });
    expect(data.made.proposal).toMatchObject({
      state: "ACCEPTED",
      revision: 3,
      reviews: [{ verdict: "ACCEPT" }],
    });
    const lists = await api.ask(`{
      accepted: proposals(state: ACCEPTED, kind: CORRECTION, mine: true, first: 2) { totalCount edges { node { id impact { looked } } } }
      open: proposals(state: OPEN) { totalCount }
      toReview: proposalsToReview { totalCount }
      on: proposalsOn(id: "tool.pit-saw") { id }
    }`);
    expect(lists.data).toMatchObject({
      accepted: { totalCount: 1, edges: [{ node: { id: proposal.id, impact: null } }] },
      ...{ open: { totalCount: 0 }, toReview: { totalCount: 0 }, on: [] },
    });
  });

  it("[J2] is superseded by another proposal that there is, and by no other", async () => {
    const [first, second] = [await make(), await make()];
    const supersede = (by: string | null) =>
      api.ask(
        `mutation ($id: ID!, $by: ID) { made: decideOnProposal(id: $id, expectedVersion: 1, verdict: SUPERSEDE, reason: "Twice", supersededBy: $by) {
          ... on ProposalChanged { proposal { state supersededBy { id } } } ... on Refused { problems { code } }
        } }`,
        { id: first.proposal.id, by },
      );
    for (const wrong of [null, "proposal.none", first.proposal.id])
      expect((await supersede(wrong)).data.made.problems).toEqual([{ code: "UNKNOWN_PROPOSAL" }]);
    expect((await supersede(second.proposal.id)).data.made.proposal).toEqual({
      ...{ state: "SUPERSEDED", supersededBy: { id: second.proposal.id } },
    });
  });
});
