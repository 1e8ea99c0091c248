import { appendFileSync } from "node:fs";
import { Agent, request } from "node:https";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { MISSING_MEANS } from "#tests/support/closing-line.ts";
import { type Follower, followHouse } from "#tests/support/follow-house.ts";
import { openLiveSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";
import { DRAIN, findProxy, openTwo, type TwoBehindAProxy } from "#tests/support/two-behind-a-proxy.ts";

const proxy = findProxy();
if (proxy === undefined)
  appendFileSync(
    MISSING_MEANS,
    "what goes through a proxy (HAProxy). Install it: apt-get install --yes haproxy\n",
  );

const CLIENTS = 8;
const CREATE = `mutation ($piece: PieceInput!) { createExamination(piece: $piece) {
  ... on ExaminationChanged { examination { id } } } }`;
const PRESENCE = 'subscription { presence(examination: "examination.x", isEditing: true) { count } }';
const piece = { ...sawnChest, attribution: { date: "1760/1775" }, parts: [], observations: [] };
/** Milliseconds that requests under way and connections have beside a drain, and what a busy machine takes. */
const REST = 12_000;

describe.skipIf(proxy === undefined)(
  "live connections through the proxy of docs/deploy, before two servers on one file",
  () => {
    let two: TwoBehindAProxy;
    const followers: Follower[] = [];
    const agent = new Agent({ keepAlive: true });
    beforeAll(async () => {
      two = await openTwo(proxy ?? "", {});
    });
    afterAll(async () => {
      for (const follower of followers) follower.stop();
      agent.destroy();
      await two?.stop();
    });

    const headers = () => ({
      Host: `${two.host}:${two.port}`,
      Origin: `https://${two.host}:${two.port}`,
      Authorization: two.authorization,
    });
    const connect = (more: object = {}): Promise<Socket> =>
      openLiveSocket(
        `https://127.0.0.1:${two.port}/`,
        { ...headers(), ...more },
        { ca: two.certificate, servername: two.host },
      );
    const connectionsAt = async (which: number): Promise<number> =>
      Number(/^scribeline_live_connections (\d+)$/m.exec(await two.numbersOf(which))?.[1]);
    /** Makes an examination; nothing where it came to nothing that is known. */
    const create = (): Promise<string | undefined> =>
      new Promise((resolve) => {
        const sending = request(
          {
            ...{ host: "127.0.0.1", port: two.port, path: "/graphql", method: "POST", agent },
            ...{ servername: two.host, ca: two.certificate },
            headers: { ...headers(), "Content-Type": "application/json" },
          },
          (response) => {
            let text = "";
            response.on("data", (chunk: Buffer) => {
              text += chunk.toString();
            });
            response.on("end", () => {
              const { data } = response.statusCode === 200 ? JSON.parse(text) : { data: undefined };
              resolve(data?.createExamination?.examination?.id);
            });
            response.on("error", () => resolve(undefined));
          },
        );
        sending.on("error", () => resolve(undefined));
        sending.end(JSON.stringify({ query: CREATE, variables: { piece } }));
      });

    it("[Z3] are passed on to both, and to nobody without the password or from another page", async () => {
      await expect(connect({ Authorization: "Basic bm9ib2R5Og==" })).rejects.toThrow("status 401");
      await expect(connect({ Origin: "https://elsewhere.example" })).rejects.toThrow("status 403");
      for (let n = 0; n < CLIENTS; n++) followers.push(await followHouse(connect));
      const counts = await Promise.all([connectionsAt(0), connectionsAt(1)]);
      expect(counts).toEqual([CLIENTS / 2, CLIENTS / 2]);
    });

    it("[Z6] tell of each other wherever each of them was sent", async () => {
      const sockets = [await connect(), await connect()] as const;
      for (const socket of sockets) socket.subscribe("p", PRESENCE);
      const last = async (socket: Socket): Promise<void> => {
        while ((await socket.next()).payload.data.presence.count !== 1);
      };
      await Promise.all(sockets.map(last));
      for (const socket of sockets) socket.close();
    });

    it.each([
      { what: "told to stop", signal: "SIGTERM", which: 0, code: 1012 },
      { what: "killed", signal: "SIGKILL", which: 1, code: 1006 },
    ] as const)(
      "[Z3] [Z5] [H3] go on at the other server when one is $what, and miss nothing",
      async ({ signal, which, code }) => {
        const before = followers.map(({ closings }) => closings.length);
        const all = async () => (await connectionsAt(0)) + (await connectionsAt(1));
        await expect.poll(all).toBe(CLIENTS);
        const here = await connectionsAt(which);
        expect(here).toBeGreaterThan(0);
        const made: string[] = [];
        let isOver = false;
        const writing = (async () => {
          while (!isOver) {
            const id = await create();
            if (id !== undefined) made.push(id);
            await new Promise((resolve) => setTimeout(resolve, 20));
          }
        })();
        await expect.poll(() => made.length).toBeGreaterThan(10);
        const took = await two.end(which, signal);
        if (signal === "SIGTERM") expect(took).toBeLessThan(DRAIN + REST);
        const then = made.length;
        await expect.poll(() => made.length).toBeGreaterThan(then + 10);
        isOver = true;
        await writing;
        const last = made.at(-1);
        for (const { heard } of followers)
          await expect.poll(() => heard.some(({ id }) => id === last)).toBe(true);

        const [first, ...others] = followers.map(({ heard }) => heard.map(({ sequence }) => sequence));
        for (const numbers of others) expect(numbers).toEqual(first);
        expect(first).toEqual([...new Set(first)].sort((a, b) => a - b));
        const told = followers[0]?.heard.map(({ id }) => id) ?? [];
        expect(made.filter((id) => told.filter((each) => each === id).length !== 1)).toEqual([]);
        const closings = followers.flatMap((follower, n) => follower.closings.slice(before[n]));
        expect(closings).toEqual(Array(here).fill(code));
        expect(await connectionsAt(1 - which)).toBe(CLIENTS);
        // Who connects again is sent to the other one at once.
        expect(followers.map(({ failures }) => failures)).toEqual(Array(CLIENTS).fill(0));
        if (signal === "SIGKILL") return;
        await two.startAgain(which);
        for (const follower of followers.splice(0)) follower.stop();
        for (let n = 0; n < CLIENTS; n++) followers.push(await followHouse(connect));
      },
    );
  },
);
