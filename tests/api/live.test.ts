import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { openHttp, post } from "#tests/support/open-http.ts";
import { openLiveSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const NEWS = `subscription ($since: Int, $about: ID, $kinds: [NewsKind!]) { news(since: $since, about: $about, kinds: $kinds) {
  sequence hasMore readAnew changes { __typename
    ... on ExaminationNews { sequence id version } ... on GraphNews { sequence revision touched } ... on ProposalNews { sequence id } } } }`;
const PRESENCE = `subscription ($id: ID!, $part: ID, $isEditing: Boolean! = false) {
  presence(examination: $id, part: $part, isEditing: $isEditing) { count others { isYou name part isEditing } } }`;
const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  done: changeExamination(id: $id, expectedVersion: $on, piece: $piece) { __typename } }`;

const store = openMemoryStore();
let server: Awaited<ReturnType<typeof openHttp>>;
const open: Socket[] = [];
beforeAll(async () => {
  server = await openHttp([sawGraph], {}, store);
});
afterAll(async () => {
  for (const socket of open) socket.close();
  await server.stop();
});

const ask = async (query: string, variables: object) => {
  const { text } = await post(server.url, { query, variables });
  return JSON.parse(text).data.done;
};
const create = async (): Promise<string> => (await ask(CREATE, { piece: sawnChest })).examination.id;
const rename = (id: string, on: number, title: string) =>
  ask(CHANGE, { id, on, piece: { ...sawnChest, title } });
const commit = async (change: Change) => {
  const made = await store.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
  if (isProblem(made)) throw new Error(made.message);
  return made;
};
async function follow(variables: object = {}) {
  const socket = await openLiveSocket(server.url);
  open.push(socket);
  socket.subscribe("1", NEWS, variables);
  const next = async () => {
    const { payload, type } = await socket.next();
    expect([type, payload.errors]).toEqual(["next", undefined]);
    return payload.data.news;
  };
  const first = await next();
  expect(first).toEqual({ sequence: expect.any(Number), hasMore: false, readAnew: false, changes: [] });
  /** So many changes, in one telling or in several. */
  const gather = async (count: number) => {
    const all: { readonly id?: string; readonly version?: number; readonly sequence: number }[] = [];
    while (all.length < count) {
      const { changes, readAnew } = await next();
      all.push(...changes);
      expect(readAnew).toBe(false);
    }
    return all;
  };
  return { next, gather, socket, since: first.sequence as number };
}

describe("[Z4] what is told while one has it open", () => {
  it("is each new version of an examination, with its place in the ledger", async () => {
    const { gather, since } = await follow();
    const id = await create();
    await rename(id, 1, "Renamed");
    expect(await gather(2)).toEqual(
      [1, 2].map((version) => ({ __typename: "ExaminationNews", sequence: since + version, id, version })),
    );
    expect(await store.newestWrite()).toBe(since + 2);
  });

  it("is each revision of the graph, whoever made it, with what it touched", async () => {
    const { next, since } = await follow({ kinds: ["GRAPH"] });
    await create();
    const { number } = await commit(adding(aTerm("tool.of-today")));
    expect(await next()).toEqual({
      ...{ sequence: since + 2, hasMore: false, readAnew: false },
      changes: [
        { __typename: "GraphNews", sequence: since + 2, revision: number, touched: ["tool.of-today"] },
      ],
    });
  });

  it("is only the examination that was asked for", async () => {
    const [mine, other] = [await create(), await create()];
    const { next } = await follow({ about: mine, kinds: ["EXAMINATION"] });
    await rename(other, 1, "Other");
    await rename(mine, 1, "Mine");
    expect((await next()).changes).toMatchObject([{ id: mine, version: 2 }]);
  });

  it("is told nobody of a draft but who makes it, and everybody of an open proposal", async () => {
    const { gather } = await follow({ kinds: ["PROPOSAL"] });
    const keep = (id: string, state: string, by: string) =>
      store.writeCards({
        cards: [{ kind: "proposal", id, expectedVersion: 0, next: { keys: {}, body: { state, by } } }],
        deed: { by, at: "2026-01-01T00:00:00Z", did: "make proposal", about: id },
      });
    await keep("proposal.hidden", "draft", "person.other");
    await keep("proposal.own", "draft", "local");
    await keep("proposal.open", "open", "person.other");
    expect(await gather(2)).toMatchObject([{ id: "proposal.own" }, { id: "proposal.open" }]);
  });

  it("ends when it is let go of, and something else can be followed", async () => {
    const { socket } = await follow();
    socket.send({ id: "1", type: "complete" });
    socket.subscribe("2", NEWS);
    expect(await socket.next()).toMatchObject({ id: "2", type: "next" });
  });
});

describe("[Z5] who comes back", () => {
  it("is told what was missed, in order, then what comes, and nothing twice", async () => {
    const { since } = await follow();
    const id = await create();
    for (let on = 1; on < 5; on++) await rename(id, on, `Version ${on + 1}`);
    const socket = await openLiveSocket(server.url);
    open.push(socket);
    socket.subscribe("again", NEWS, { since, about: id });
    const missed = (await socket.next()).payload.data.news;
    expect(missed).toMatchObject({ sequence: since + 5, hasMore: false, readAnew: false });
    expect(missed.changes.map(({ version }: { version: number }) => version)).toEqual([1, 2, 3, 4, 5]);
    await rename(id, 5, "Version 6");
    expect((await socket.next()).payload.data.news.changes).toMatchObject([{ id, version: 6 }]);
  });
});

describe("[Z6] who else has a piece open", () => {
  it("is told at once, when somebody comes, does something else, and goes", async () => {
    const at = async (variables: object) => {
      const socket = await openLiveSocket(server.url);
      open.push(socket);
      socket.subscribe("p", PRESENCE, { id: "examination.x", ...variables });
      return socket;
    };
    const first = await at({});
    expect((await first.next()).payload.data.presence).toEqual({ count: 0, others: [] });
    const second = await at({ part: "back", isEditing: true });
    const other = { isYou: true, name: null };
    expect((await second.next()).payload.data.presence).toEqual({
      count: 1,
      others: [{ ...other, part: null, isEditing: false }],
    });
    expect((await first.next()).payload.data.presence).toEqual({
      count: 1,
      others: [{ ...other, part: "back", isEditing: true }],
    });
    second.close();
    expect((await first.next()).payload.data.presence).toEqual({ count: 0, others: [] });
  });
});

describe("[Z3] what is asked in another way", () => {
  it("is refused: a subscription over HTTP", async () => {
    const { text, status } = await post(server.url, { query: "subscription { news { sequence } }" });
    expect([status, JSON.parse(text).data ?? null]).toEqual([200, null]);
    expect(JSON.parse(text).errors[0].extensions.code).toBe("BAD_REQUEST");
  });
});
