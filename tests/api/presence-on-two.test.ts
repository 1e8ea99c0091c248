import { afterAll, beforeAll, expect, it } from "vitest";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { openHttp, post } from "#tests/support/open-http.ts";
import { openLiveSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";

const PRESENCE = `subscription ($id: ID!, $isEditing: Boolean! = false) {
  presence(examination: $id, isEditing: $isEditing) { count others { name isEditing } } }`;
const CREATE = `mutation ($piece: PieceInput!, $seenBy: [ID!]) { done: createExamination(piece: $piece, seenBy: $seenBy) {
  ... on ExaminationChanged { examination { id } } } }`;
const SHOW = `mutation ($id: ID!, $seenBy: [ID!]) { done: setExaminationAccess(id: $id, seenBy: $seenBy) { __typename } }`;

// One house, served twice over one file.
let house: Awaited<ReturnType<typeof openHouse>>;
let other: Awaited<ReturnType<typeof openHttp>>;
const open: Socket[] = [];
beforeAll(async () => {
  const path = temporaryPath();
  house = await openHouse({}, answered(await openSqliteStore(path)));
  other = await openHttp([], { accounts: true }, answered(await openSqliteStore(path)));
});
afterAll(async () => {
  for (const socket of open) socket.close();
  await Promise.all([house.stop(), other.stop()]);
});

/** What somebody is told at one of the two, last. */
async function follow(url: string, who: Cookie, variables: object) {
  const socket = await openLiveSocket(url, who);
  open.push(socket);
  socket.subscribe("p", PRESENCE, variables);
  const told: unknown[] = [];
  void (async () => {
    for (;;) {
      const { type, payload } = await socket.next();
      told.push(type === "next" && payload.errors === undefined ? payload.data.presence : "refused");
    }
  })().catch(() => told.push("closed"));
  await expect.poll(() => told.length).toBeGreaterThan(0);
  return { socket, last: () => told.at(-1) };
}
const nobody = { count: 0, others: [] };

it("[Z6] [C26] tells of somebody at another process by name, to whoever may see the examination and nobody else", async () => {
  const [rita, cleo] = [await house.join("contributor", "rita"), await house.join("contributor", "cleo")];
  const { text } = await post(
    house.url,
    { query: CREATE, variables: { piece: sawnChest, seenBy: [(await house.who(cleo)).id] } },
    rita,
  );
  const { id } = JSON.parse(text).data.done.examination;
  const others = await follow(house.url, house.owner, { id });
  const elsewhere = await follow(other.url, house.owner, { id, isEditing: true });
  const hers = await follow(house.url, rita, { id, isEditing: true });
  const cleos = await follow(other.url, cleo, { id });
  await expect.poll(hers.last).toEqual({ count: 1, others: [{ name: "cleo", isEditing: false }] });
  await expect.poll(cleos.last).toEqual({ count: 1, others: [{ name: "rita", isEditing: true }] });
  expect(JSON.stringify([others.last(), elsewhere.last()])).not.toMatch(/rita|cleo/);

  await post(house.url, { query: SHOW, variables: { id, seenBy: [] } }, rita);
  await expect.poll(hers.last).toEqual(nobody);
  await expect.poll(cleos.last).toBe("refused");
});
