import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";
import { openLiveSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";

const NEWS = `subscription ($since: Int, $about: ID) { news(since: $since, about: $about) {
  changes { ... on ExaminationNews { id version } } } }`;
const PRESENCE = `subscription ($id: ID!, $isEditing: Boolean! = false) {
  presence(examination: $id, isEditing: $isEditing) { count others { name } } }`;
const CREATE = `mutation ($piece: PieceInput!, $seenBy: [ID!]) { done: createExamination(piece: $piece, seenBy: $seenBy) {
  ... on ExaminationChanged { examination { id } } } }`;
const SHOW = `mutation ($id: ID!, $seenBy: [ID!]) { done: setExaminationAccess(id: $id, seenBy: $seenBy) {
  ... on Refused { problems { code } } } }`;
const MAKE = `mutation ($input: ProposalInput!) { done: makeProposal(input: $input, open: true) {
  ... on ProposalChanged { proposal { id } } } }`;
const IMPACT = `query ($id: ID!) { proposal(id: $id) {
  impact(pieces: 9) { looked movedCount hidden moved { id } } } }`;

let house: Awaited<ReturnType<typeof openHouse>>;
let [rita, cleo]: Cookie[] = [];
const open: Socket[] = [];
beforeAll(async () => {
  house = await openHouse();
  rita = await house.join("contributor", "rita");
  cleo = await house.join("contributor", "cleo");
});
afterAll(async () => {
  for (const socket of open) socket.close();
  await house.stop();
});

const ask = async (who: Cookie | undefined, query: string, variables: object = {}) => {
  const { text } = await post(house.url, { query, variables }, who as Cookie);
  expect(JSON.parse(text).errors).toBeUndefined();
  return JSON.parse(text).data;
};
const record = async (seenBy?: readonly string[]): Promise<string> =>
  (await ask(rita, CREATE, { piece: sawnChest, seenBy })).done.examination.id;
const connect = async (who: Cookie | undefined): Promise<Socket> => {
  const socket = await openLiveSocket(house.url, who);
  open.push(socket);
  return socket;
};
const idOf = async (who: Cookie | undefined): Promise<string> => (await house.who(who as Cookie)).id;

describe("[C26] what is not shown", () => {
  it("is no news to others, those who catch up too, and is to whoever sees it", async () => {
    const since = await house.store.newestWrite();
    const hers = await connect(rita);
    const others = await connect(house.owner);
    for (const socket of [hers, others]) {
      socket.subscribe("1", NEWS);
      expect((await socket.next()).payload.data.news.changes).toEqual([]);
    }
    const hidden = await record([]);
    expect((await hers.next()).payload.data.news.changes).toEqual([{ id: hidden, version: 1 }]);
    const shown = await record();
    expect((await others.next()).payload.data.news.changes).toEqual([{ id: shown, version: 1 }]);
    const late = await connect(cleo);
    late.subscribe("1", NEWS, { since });
    expect((await late.next()).payload.data.news.changes).toEqual([{ id: shown, version: 1 }]);
    late.subscribe("2", NEWS, { since, about: hidden });
    expect((await late.next()).payload.data.news.changes).toEqual([]);
  });

  it("has nobody at it, for whoever may not see it", async () => {
    const id = await record([await idOf(cleo)]);
    const [hers, cleos, others] = [await connect(rita), await connect(cleo), await connect(house.owner)];
    const told = async (socket: Socket) => (await socket.next()).payload.data.presence;
    hers.subscribe("p", PRESENCE, { id });
    expect(await told(hers)).toEqual({ count: 0, others: [] });
    others.subscribe("p", PRESENCE, { id });
    expect(await told(others)).toEqual({ count: 0, others: [] });
    cleos.subscribe("p", PRESENCE, { id });
    expect(await told(cleos)).toEqual({ count: 1, others: [{ name: "rita" }] });
    expect(await told(hers)).toEqual({ count: 1, others: [{ name: "cleo" }] });
  });

  it("is followed no more by whoever it was shown to", async () => {
    const id = await record([await idOf(cleo)]);
    const [hers, cleos] = [await connect(rita), await connect(cleo)];
    cleos.subscribe("p", PRESENCE, { id });
    await cleos.next();
    await ask(rita, SHOW, { id, seenBy: [] });
    hers.subscribe("p", PRESENCE, { id, isEditing: true });
    const { type, payload } = await cleos.next();
    expect([type, JSON.stringify(payload)]).toEqual([
      expect.stringMatching(/next|error/),
      expect.stringContaining("UNKNOWN_EXAMINATION"),
    ]);
  });

  it("has nobody there any more to whom it is not shown, at once and without anybody else's doing", async () => {
    const id = await record([await idOf(cleo)]);
    const [hers, cleos] = [await connect(rita), await connect(cleo)];
    hers.subscribe("p", PRESENCE, { id });
    await hers.next();
    cleos.subscribe("p", PRESENCE, { id, isEditing: true });
    expect((await cleos.next()).payload.data.presence).toEqual({ count: 1, others: [{ name: "rita" }] });
    expect((await hers.next()).payload.data.presence).toEqual({ count: 1, others: [{ name: "cleo" }] });
    await ask(rita, SHOW, { id, seenBy: [] });
    expect((await hers.next()).payload.data.presence).toEqual({ count: 0, others: [] });
    expect(JSON.stringify((await cleos.next()).payload)).toContain("UNKNOWN_EXAMINATION");
  });

  it("counts in what a proposal would do, and is not named there", async () => {
    const hidden = await record([]);
    const { standing } = await ask(cleo, `{ standing(id: "claim.saw") }`);
    const [{ before }] = standing;
    const input = {
      kind: "CORRECTION",
      title: "Earlier",
      why: "A bill has it.",
      change: [{ kind: "claim", before, after: { ...before, when: "1700" } }],
    };
    const { id } = (await ask(cleo, MAKE, { input })).done.proposal;
    const seen = async (who: Cookie | undefined) => (await ask(who, IMPACT, { id })).proposal.impact;
    const [hers, others] = [await seen(rita), await seen(house.owner)];
    expect(hers.movedCount).toBeGreaterThan(0);
    expect(others.movedCount).toBe(hers.movedCount);
    expect(others.moved).toHaveLength(others.movedCount - others.hidden);
    const ids = ({ moved }: { moved: readonly { id: string }[] }) => moved.map((each) => each.id);
    expect(ids(hers)).toContain(hidden);
    expect(ids(others)).not.toContain(hidden);
    expect([hers.hidden, others.hidden > 0]).toEqual([0, true]);
  });
});
