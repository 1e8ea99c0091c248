import { afterAll, expect, it } from "vitest";
import { followHouse } from "#tests/support/follow-house.ts";
import { openLiveSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";
import { askServer, type ServerProcess } from "#tests/support/server-process.ts";

const PRESENCE = `subscription ($id: ID!, $part: ID, $isEditing: Boolean! = false) {
  presence(examination: $id, part: $part, isEditing: $isEditing) { count others { isYou part isEditing } } }`;
const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  __typename ... on ExaminationChanged { examination { id } } } }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  changeExamination(id: $id, expectedVersion: $on, piece: $piece) { __typename } }`;
const piece = { ...sawnChest, attribution: { date: "1760/1775" }, parts: [], observations: [] };

/** Rules Z4 to Z6 between two servers on one store. */
export function liveOnTwo(servers: () => readonly [ServerProcess, ServerProcess]): void {
  const open: { readonly close: () => void }[] = [];
  afterAll(() => {
    for (const each of open.splice(0)) each.close();
  });
  const connect = async (which: 0 | 1): Promise<Socket> => {
    const socket = await openLiveSocket(servers()[which].url);
    open.push(socket);
    return socket;
  };
  const create = async (which: 0 | 1): Promise<string> => {
    const { data } = await askServer(servers()[which].url, CREATE, { piece });
    return data.createExamination.examination.id;
  };
  const rename = async (which: 0 | 1, id: string, on: number) => {
    const titled = { ...piece, title: `Version ${on + 1}` };
    const { data } = await askServer(servers()[which].url, CHANGE, { id, on, piece: titled });
    expect(data.changeExamination).toEqual({ __typename: "ExaminationChanged" });
  };

  it("[Z4] [Z5] tell a client of the one what was changed at the other, and what it missed where it connects again", async () => {
    let at: 0 | 1 = 1;
    let socket: Socket | undefined;
    const follower = await followHouse(async () => {
      socket = await connect(at);
      return socket;
    });
    open.push({ close: follower.stop });
    const id = await create(0);
    await rename(0, id, 1);
    const versions = () => follower.heard.filter((each) => each.id === id).map(({ version }) => version);
    await expect.poll(versions).toEqual([1, 2]);
    at = 0;
    socket?.close();
    await rename(1, id, 2);
    await rename(1, id, 3);
    await expect.poll(versions).toEqual([1, 2, 3, 4]);
    const numbers = follower.heard.map(({ sequence }) => sequence);
    expect(numbers).toEqual([...new Set(numbers)].sort((a, b) => a - b));
    follower.stop();
  });

  it("[Z6] tell a client of the one who has the same piece open at the other, what they do, and that they went", async () => {
    const id = await create(0);
    const [here, there, apart] = [await connect(0), await connect(1), await connect(1)];
    const told = async (socket: Socket) => (await socket.next()).payload.data.presence;
    here.subscribe("p", PRESENCE, { id });
    expect(await told(here)).toEqual({ count: 0, others: [] });
    apart.subscribe("p", PRESENCE, { id: "examination.other", isEditing: true });
    expect(await told(apart)).toEqual({ count: 0, others: [] });
    there.subscribe("p", PRESENCE, { id, part: "top" });
    expect(await told(here)).toEqual({ count: 1, others: [{ isYou: true, part: "top", isEditing: false }] });
    there.subscribe("q", PRESENCE, { id, part: "top", isEditing: true });
    there.send({ id: "p", type: "complete" });
    expect(await told(here)).toEqual({ count: 1, others: [{ isYou: true, part: "top", isEditing: true }] });
    const before = (await askServer(servers()[0].url, "{ __typename }")).sequence;
    there.close();
    expect(await told(here)).toEqual({ count: 0, others: [] });
    expect((await askServer(servers()[0].url, "{ __typename }")).sequence).toBe(before);
  });
}
