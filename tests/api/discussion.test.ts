import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MOST_COMMENTS } from "#server/domain/proposals/comment.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { openHouse } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

type Cookie = { readonly Cookie: string };

const COMMENT = `mutation ($on: ID!, $text: String!, $answers: ID, $mentions: [ID!]!) {
  done: comment(on: $on, text: $text, answers: $answers, mentions: $mentions) {
    ... on Comment { id text by { name } mentions { name } answers }
    ... on Refused { problems { code path } }
  }
}`;
const MAKE = `mutation ($input: ProposalInput!, $open: Boolean!) {
  done: makeProposal(input: $input, open: $open) {
    ... on ProposalChanged { proposal { id version } } ... on Refused { problems { code } }
  }
}`;
const DISPUTE = `mutation ($claim: ID!, $says: String!) { done: disputeClaim(claim: $claim, says: $says) {
  ... on Dispute { id version state } ... on Refused { problems { code } }
} }`;
const END = `mutation ($id: ID!, $on: Int!, $outcome: DisputeOutcome!, $says: String!) {
  done: endDispute(id: $id, expectedVersion: $on, outcome: $outcome, says: $says) {
    ... on Dispute { version state decision { outcome says by { name } } } ... on Refused { problems { code } }
  }
}`;

describe("talk of many in one house", () => {
  let house: Awaited<ReturnType<typeof openHouse>>;
  let people: Readonly<Record<"cleo" | "rolf" | "rita" | "zoe", Cookie>>;
  let ids: Readonly<Record<string, string>>;
  beforeAll(async () => {
    house = await openHouse();
    people = {
      cleo: await house.join("contributor", "cleo"),
      rolf: await house.join("reviewer", "rolf"),
      rita: await house.join("reader", "rita"),
      zoe: await house.join("reviewer", "zoe"),
    };
    const { data } = await ask(people.cleo, "{ people { id name } }");
    ids = Object.fromEntries(data.people.map(({ id, name }: { id: string; name: string }) => [name, id]));
  });
  afterAll(() => house.stop());

  const ask = async (who: Cookie, query: string, variables: Record<string, unknown> = {}) => {
    const { status, text } = await post(house.url, { query, variables }, who);
    expect([status, JSON.parse(text).errors]).toEqual([200, undefined]);
    return JSON.parse(text);
  };
  const done = async (who: Cookie, query: string, variables: Record<string, unknown>) =>
    (await ask(who, query, variables)).data.done;
  const codes = ({ problems = [] }: { problems?: readonly { code: string }[] }) =>
    problems.map(({ code }) => code);
  let made = 0;
  const make = async (open: boolean) => {
    const change = adding(aTerm(`tool.plane-${++made}`));
    const input = { kind: "TERM", title: "A plane", why: "It lacks.", change };
    return (await done(people.cleo, MAKE, { input, open })).proposal.id as string;
  };

  it("[J5] is kept in threads, and calls people, who find it", async () => {
    const on = await make(true);
    const first = await done(people.rolf, COMMENT, { on, text: "Which @cleo?", mentions: [ids["cleo"]] });
    expect(first).toMatchObject({ by: { name: "rolf" }, mentions: [{ name: "cleo" }], answers: null });
    const second = await done(people.cleo, COMMENT, {
      on,
      text: "A jack plane.",
      answers: first.id,
      mentions: [],
    });
    expect(second.answers).toBe(first.id);
    const { data } = await ask(people.cleo, "{ mentions { id on } }");
    expect(data.mentions).toEqual([{ id: first.id, on }]);
    expect((await ask(people.rolf, "{ mentions { id } }")).data.mentions).toEqual([]);
    const list = await ask(
      people.rita,
      "query ($on: ID!) { comments(on: $on) { edges { node { text } } } }",
      { on },
    );
    expect(list.data.comments.edges.map(({ node }: { node: { text: string } }) => node.text)).toEqual([
      "Which @cleo?",
      "A jack plane.",
    ]);
  });

  it("[J5] comes to an end at so many comments, of one thing alone", async () => {
    const [on, other] = [await make(true), await make(true)];
    const say = (about: string, n: number) =>
      done(people.rolf, COMMENT, { on: about, text: `Thought ${n}`, mentions: [] });
    for (let n = 1; n <= MOST_COMMENTS; n++) expect(await say(on, n)).toHaveProperty("id");
    const refused = { problems: [{ code: "TOO_LARGE", path: ["on"] }] };
    expect(await say(on, MOST_COMMENTS + 1)).toEqual(refused);
    expect(await say(other, 1)).toHaveProperty("id");
    const { data } = await ask(people.rita, "query ($on: ID!) { comments(on: $on) { totalCount } }", { on });
    expect(data.comments.totalCount).toBe(MOST_COMMENTS);
  });

  it("[J5] calls nobody who may not see it, and nobody who is not there", async () => {
    const draft = await make(false);
    const call = (who: Cookie, on: string, person: string | undefined) =>
      done(who, COMMENT, { on, text: "Look", mentions: [person] });
    expect(codes(await call(people.cleo, draft, ids["rolf"]))).toEqual(["NOT_ALLOWED"]);
    expect(codes(await call(people.rolf, draft, ids["cleo"]))).toEqual(["UNKNOWN_PROPOSAL"]);
    expect(
      (await ask(people.rolf, `{ comments(on: "${draft}") { totalCount } }`)).data.comments.totalCount,
    ).toBe(0);
    const open = await make(true);
    expect(codes(await call(people.cleo, open, "person.nobody"))).toEqual(["UNKNOWN_PERSON"]);
    expect((await ask(people.rolf, "{ mentions { id } }")).data.mentions).toEqual([]);
  });

  it("[J5] refuses what is empty, too long, or an answer to something else", async () => {
    const [on, other] = [await make(true), await make(true)];
    const first = await done(people.rolf, COMMENT, { on, text: "One", mentions: [] });
    const say = (text: string, answers?: string) =>
      done(people.rolf, COMMENT, { on: other, text, mentions: [], ...(answers ? { answers } : {}) });
    expect(codes(await say(" "))).toEqual(["EMPTY_LIST"]);
    expect(codes(await say("x".repeat(5001)))).toEqual(["TOO_LARGE"]);
    expect(codes(await say("Two", first.id))).toEqual(["WRONG_STATE"]);
    expect(codes(await done(people.rita, COMMENT, { on, text: "Three", mentions: [] }))).toEqual([
      "NOT_ALLOWED",
    ]);
  });

  it("[J6] disputes an accepted claim without changing it, and ends with a decision that stays", async () => {
    const before = await ask(
      people.rita,
      '{ claim(id: "claim.saw") { says strength status } revision { number } }',
    );
    const opened = await done(people.rolf, DISPUTE, { claim: "claim.saw", says: "The patent is later." });
    expect(opened).toMatchObject({ version: 1, state: "OPEN" });
    const shown = await ask(
      people.rita,
      '{ claim(id: "claim.saw") { says strength status disputes { id state says by { name } } } revision { number } }',
    );
    const count = async () =>
      (await ask(people.rita, '{ claim(id: "claim.saw") { openDisputes } }')).data.claim;
    expect(await count()).toEqual({ openDisputes: 1 });
    const { disputes, ...claim } = shown.data.claim;
    expect({ claim, revision: shown.data.revision }).toEqual(before.data);
    expect(disputes).toEqual([
      { id: opened.id, state: "OPEN", says: "The patent is later.", by: { name: "rolf" } },
    ]);
    const end = (who: Cookie, outcome: string, says = "The patent names a later machine.") =>
      done(who, END, { id: opened.id, on: 1, outcome, says });
    expect(codes(await end(people.rolf, "STANDS"))).toEqual(["NOT_ALLOWED"]);
    expect(codes(await end(people.cleo, "STANDS"))).toEqual(["NOT_ALLOWED"]);
    expect(codes(await end(people.zoe, "TAKEN_BACK"))).toEqual(["NOT_ALLOWED"]);
    expect(codes(await end(people.zoe, "STANDS", ""))).toEqual(["EMPTY_LIST"]);
    expect(await end(people.zoe, "STANDS")).toMatchObject({
      ...{ version: 2, state: "ENDED", decision: { outcome: "STANDS", by: { name: "zoe" } } },
    });
    expect(codes(await end(people.zoe, "CORRECTED"))).toEqual(["WRONG_STATE"]);
    expect(await count()).toEqual({ openDisputes: 0 });
    const lists = await ask(
      people.rita,
      "{ open: disputes { totalCount } ended: disputes(state: ENDED) { totalCount } }",
    );
    expect(lists.data).toEqual({ open: { totalCount: 0 }, ended: { totalCount: 1 } });
  });

  it("[J6] is for what is accepted alone, and is taken back by whoever brought it up", async () => {
    expect(codes(await done(people.cleo, DISPUTE, { claim: "claim.none", says: "No" }))).toEqual([
      "UNKNOWN_CLAIM",
    ]);
    const { id } = await done(people.cleo, DISPUTE, { claim: "claim.marks", says: "I doubt it." });
    const taken = await done(people.cleo, END, { id, on: 1, outcome: "TAKEN_BACK", says: "" });
    expect(taken).toMatchObject({ state: "ENDED", decision: { outcome: "TAKEN_BACK" } });
  });

  it("[J6] counts every dispute of many who bring one up at the same time", async () => {
    const brought = await Promise.all(
      [1, 2, 3].map((n) => done(people.cleo, DISPUTE, { claim: "claim.plain", says: `Doubt ${n}` })),
    );
    const kept = brought.filter(({ id }) => id !== undefined).length;
    expect(kept).toBeGreaterThan(0);
    const { data } = await ask(people.rita, '{ claim(id: "claim.plain") { openDisputes disputes { id } } }');
    expect([data.claim.openDisputes, data.claim.disputes.length]).toEqual([kept, kept]);
  });

  it("[J2] keeps a maker from deciding, and says why", async () => {
    const input = { kind: "TERM", title: "Mine", why: "So.", change: adding(aTerm("tool.mine")) };
    const { proposal } = await done(people.rolf, MAKE, { input, open: true });
    const { data } = await ask(
      people.rolf,
      "query ($id: ID!) { proposal(id: $id) { may { step refused } } }",
      {
        id: proposal.id,
      },
    );
    const why = data.proposal.may.find(({ step }: { step: string }) => step === "ACCEPT").refused;
    expect(why).toMatch(/Nobody decides on their own proposal/);
    const queue = await ask(
      people.rolf,
      "{ proposalsToReview(first: 50) { totalCount edges { node { id isMine } } } }",
    );
    const { edges, totalCount } = queue.data.proposalsToReview;
    expect(edges.some(({ node }: { node: { isMine: boolean } }) => node.isMine)).toBe(false);
    expect(edges).toHaveLength(totalCount);
  });
});
