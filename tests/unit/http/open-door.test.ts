import { Agent, createServer, get } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, it } from "vitest";
import { openDoor } from "#server/http/open-door.ts";

/** Works for so many milliseconds without letting anybody else have a turn. */
function workFor(milliseconds: number): void {
  for (const began = performance.now(); performance.now() - began < milliseconds; );
}

it("[H7] requests that are there at once begin one by one, in their order, each in a turn of its own", async () => {
  const inTurn = openDoor();
  let turn = 0;
  const count = () => {
    turn++;
    ticking = setImmediate(count);
  };
  let ticking = setImmediate(count);
  const begun = await Promise.all(
    Array.from({ length: 8 }, async (_, number) => {
      await inTurn();
      return { number, turn };
    }),
  );
  clearImmediate(ticking);
  expect(begun.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect(new Set(begun.map((one) => one.turn)).size).toBe(8);
});

const MANY = 30;

it("[H7] who comes new to a server under load waits for some of the others, not for all of them again and again", async () => {
  const inTurn = openDoor();
  const server = createServer(async (_, response) => {
    await inTurn();
    workFor(1);
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
