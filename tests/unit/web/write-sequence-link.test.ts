import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { gql } from "@apollo/client";
import { afterEach, expect, it } from "vitest";
import { makeClient } from "#web/shared/apollo/make-client.ts";

interface Answer {
  readonly status?: number;
  /** What it says it knows of. */
  readonly sequence?: number;
  readonly code?: string;
}
const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

/** A client of a server that answers so, one after the other, and what each request named. */
async function clientOf(...answers: readonly Answer[]) {
  const named: (string | undefined)[] = [];
  const server = createServer((request, response) => {
    const { status = 200, sequence, code } = answers[named.length] ?? {};
    named.push(request.headers["scribeline-sequence"] as string | undefined);
    if (sequence !== undefined) response.setHeader("Scribeline-Sequence", sequence);
    response.writeHead(status, { "Content-Type": "application/json" });
    const said =
      code === undefined ? { data: { a: 1 } } : { errors: [{ message: code, extensions: { code } }] };
    response.end(JSON.stringify(said));
  });
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const client = makeClient(`http://127.0.0.1:${(server.address() as AddressInfo).port}/graphql`);
  const ask = () => client.query({ query: gql("{ a }"), fetchPolicy: "no-cache" });
  return { ask, named };
}

it("[H4] sends the newest number that any answer had, and none before the first", async () => {
  const { ask, named } = await clientOf({ sequence: 7 }, { sequence: 5 }, {}, { sequence: 9 });
  for (let n = 0; n < 5; n++) await ask();
  expect(named).toEqual([undefined, "7", "7", "7", "9"]);
});

it("[H5] asks once more without a number where a server does not know so much, and goes on from there", async () => {
  const { ask, named } = await clientOf(
    { sequence: 7 },
    { status: 503, code: "NOT_REACHED_YET", sequence: 3 },
    { sequence: 3 },
    { sequence: 4 },
  );
  await ask();
  expect((await ask()).data).toEqual({ a: 1 });
  await ask();
  expect(named).toEqual([undefined, "7", undefined, "3"]);
});

it("[H5] passes on every other failure", async () => {
  const { ask, named } = await clientOf(
    { sequence: 7 },
    { status: 503, code: "ANOTHER" },
    { status: 503, code: "NOT_REACHED_YET" },
    { status: 503, code: "NOT_REACHED_YET" },
  );
  await ask();
  await expect(ask()).rejects.toThrow("503");
  await expect(ask()).rejects.toThrow("503");
  expect(named).toEqual([undefined, "7", "7", undefined]);
});
