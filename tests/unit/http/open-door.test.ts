import { Agent, createServer, get } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, it } from "vitest";
import { openDoor } from "#server/http/open-door.ts";

/** Works for so many milliseconds without letting anybody else have a turn. */
function workFor(milliseconds: number): void {
  for (const began = performance.now(); performance.now() - began < milliseconds; );
}

it("[H7] requests that are there at once begin in their order, in one turn as many as take ten milliseconds", async () => {
  let time = 0;
  const inTurn = openDoor(() => time);
  const connection = {};
  let turn = 0;
  const count = () => {
    turn++;
    ticking = setImmediate(count);
  };
  let ticking = setImmediate(count);
  const begun = await Promise.all(
    Array.from({ length: 8 }, async (_, number) => {
      await inTurn(connection);
      const began = turn;
      // What a request does in several steps without waiting belongs to it.
      await Promise.resolve();
      time += 4;
      return { number, began };
    }),
  );
  clearImmediate(ticking);
  expect(begun.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  const perTurn = [...Map.groupBy(begun, ({ began }) => began).values()].map(({ length }) => length);
  expect(perTurn).toEqual([3, 3, 2]);
});

it("[H7] the door opens again for who comes when nobody waited", async () => {
  const inTurn = openDoor();
  const connection = {};
  await inTurn(connection);
  await new Promise((resolve) => setImmediate(resolve));
  await inTurn(connection);
  const both = await Promise.all([
    inTurn(connection).then(() => "first"),
    inTurn(connection).then(() => "second"),
  ]);
  expect(both).toEqual(["first", "second"]);
});

it.each([
  ["nobody is let in while new connections come turn after turn", 12, 12],
  ["but not for ever", 500, 200],
])("[H7] %s", async (_, many, expected) => {
  const inTurn = openDoor();
  let come = 0;
  let cameBefore: number | undefined;
  const letsIn = (): void => {
    cameBefore ??= come;
  };
  const all: Promise<void>[] = [];
  for (; come < many; come++) {
    all.push(inTurn({}).then(letsIn));
    await new Promise((resolve) => setImmediate(resolve));
  }
  await Promise.all(all);
  expect(cameBefore).toBe(expected);
});

const MANY = 30;

it("[H7] who comes new to a server under load waits for some of the others, not for all of them again and again", async () => {
  const inTurn = openDoor();
  const server = createServer(async ({ socket }, response) => {
    await inTurn(socket);
    workFor(5);
    response.end("done");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const ask = (agent: Agent): Promise<void> =>
    new Promise((resolve, reject) => {
      get({ host: "127.0.0.1", port, agent }, (response) => response.resume().once("end", resolve)).once(
        "error",
        reject,
      );
    });
  const [standing, coming] = [1, 2].map(() => new Agent({ keepAlive: true, maxSockets: MANY })) as [
    Agent,
    Agent,
  ];
  const people = Array.from({ length: MANY });
  await Promise.all(people.map(() => ask(standing)));
  let answered = 0;
  let isOver = false;
  const askOn = async (): Promise<void> => {
    while (!isOver) {
      await ask(standing);
      answered++;
    }
  };
  const asking = people.map(askOn);
  await Promise.all(people.map(() => ask(coming)));
  isOver = true;
  await Promise.all(asking);
  // Were all of them answered in one turn, the last who came would have waited for some thirty of each.
  expect(answered / MANY).toBeLessThan(8);
  for (const agent of [standing, coming]) agent.destroy();
  await new Promise((resolve) => server.close(resolve));
});
