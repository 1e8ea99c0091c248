import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openHttp, post, send } from "#tests/support/open-http.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const TYPENAME = { query: "{ __typename }" };

describe("a server that proxies stand in front of", () => {
  let server: Awaited<ReturnType<typeof openHttp>>;
  beforeAll(async () => {
    server = await openHttp([sawGraph], {
      origins: ["https://graph.museum.example", "http://graph.lan:8080"],
    });
  });
  afterAll(() => server.stop());

  it.each([
    ["graph.museum.example", 200],
    ["GRAPH.museum.example:443", 200],
    ["graph.lan:8080", 200],
    ["127.0.0.1:4820", 200],
    ["graph.museum.example:8080", 421],
    ["graph.lan", 421],
    ["museum.example", 421],
    ["evil.graph.museum.example", 421],
    ["graph.museum.example.evil.example", 421],
    ["graph.museum.example@evil.example", 421],
  ])("[H15] answers as %s with %i, pages and API alike", async (host, status) => {
    expect((await send(server.url, { headers: { Host: host } })).status).toBe(status);
    expect((await post(server.url, TYPENAME, { Host: host })).status).toBe(status);
  });

  it.each([
    ["graph.museum.example", "https://graph.museum.example", 200],
    ["graph.lan:8080", "http://graph.lan:8080", 200],
    ["127.0.0.1:4820", "http://127.0.0.1:4820", 200],
    // Plain HTTP is another origin than HTTPS.
    ["graph.museum.example", "http://graph.museum.example", 403],
    ["graph.museum.example", "http://graph.lan:8080", 403],
    ["graph.museum.example", "http://127.0.0.1:4820", 403],
    ["127.0.0.1:4820", "https://graph.museum.example", 403],
    ["graph.museum.example", "null", 403],
  ])("[H15] a page reached as %s that says it is %s may ask, or not: %i", async (host, origin, status) => {
    expect((await post(server.url, TYPENAME, { Host: host, Origin: origin })).status).toBe(status);
  });

  it("[H15] names nobody else in its refusal", async () => {
    const { text } = await send(server.url, { headers: { Host: "evil.example" } });
    expect(JSON.parse(text).errors[0]).toMatchObject({
      message:
        "This server answers as 127.0.0.1, localhost, https://graph.museum.example, http://graph.lan:8080 only.",
      extensions: { code: "FOREIGN_HOST" },
    });
  });

  it("[H13] tells its numbers to no one who comes by the name of the proxy", async () => {
    const { status } = await send(`${server.url}metrics`, { headers: { Host: "graph.museum.example" } });
    expect(status).toBe(404);
  });
});

describe("a server on the other loopback address", () => {
  it("[H14] is reached there", async () => {
    const server = await openHttp([sawGraph], { address: "::1" });
    try {
      expect(new URL(server.url).hostname).toBe("[::1]");
      expect((await send(`${server.url}healthz`)).status).toBe(200);
    } finally {
      await server.stop();
    }
  });
});
