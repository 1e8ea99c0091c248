import { Agent } from "node:http";
import { brotliDecompressSync, gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openHttp, post, send } from "#tests/support/open-http.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const TYPENAME = { query: "{ __typename }" };
const CREATE = "mutation ($piece: PieceInput!) { createExamination(piece: $piece) { __typename } }";

describe("the server", () => {
  let server: Awaited<ReturnType<typeof openHttp>>;
  beforeAll(async () => {
    server = await openHttp([sawGraph]);
  });
  afterAll(() => server.stop());
  const countExaminations = async () =>
    JSON.parse((await post(server.url, { query: "{ examinations { totalCount } }" })).text).data.examinations
      .totalCount;

  it("[A16] listens on 127.0.0.1 only", () => {
    expect(new URL(server.url).hostname).toBe("127.0.0.1");
  });

  it.each([
    ["evil.example", 421],
    ["evil.example:4820", 421],
    ["127.0.0.1.evil.example", 421],
    ["localhost.evil.example", 421],
    ["10.0.0.7:4820", 421],
    ["localhost:4820", 200],
    ["127.0.0.1:1", 200],
    ["[::1]:4820", 200],
  ])("[A16] answers as %s with %i, pages and API alike", async (host, status) => {
    for (const path of ["", "healthz", "assets/main-abc123.js"])
      expect((await send(server.url + path, { headers: { Host: host } })).status).toBe(status);
    expect((await post(server.url, TYPENAME, { Host: host })).status).toBe(status);
  });

  it.each([
    [{ Origin: "http://evil.example" }, 403],
    [{ Origin: "http://localhost:3000" }, 403],
    [{ Origin: "https://localhost:4820" }, 403],
    [{ Origin: "null" }, 403],
    [{ "Sec-Fetch-Site": "cross-site" }, 403],
    [{ "Sec-Fetch-Site": "same-site" }, 403],
    [{ Origin: "http://localhost:4820", "Sec-Fetch-Site": "same-origin" }, 200],
    [{ "Sec-Fetch-Site": "none" }, 200],
    [{}, 200],
  ] as [Record<string, string>, number][])(
    "[A17] a change sent with %o is answered %i, and made or not",
    async (headers, status) => {
      const before = await countExaminations();
      const answer = await post(
        server.url,
        { query: CREATE, variables: { piece: sawnChest } },
        { Host: "localhost:4820", ...headers },
      );
      expect(answer.status).toBe(status);
      expect(JSON.parse(answer.text)).toHaveProperty(status === 200 ? "data" : "errors");
      expect(await countExaminations()).toBe(before + (status === 200 ? 1 : 0));
    },
  );

  it("[A17] a form of another page cannot send a change", async () => {
    const before = await countExaminations();
    const query = CREATE.replace("($piece: PieceInput!)", "").replace(
      "$piece",
      '{ title: "T", examined: 2026, attribution: { date: "1760" }, parts: [], observations: [] }',
    );
    for (const type of [
      "text/plain",
      "application/x-www-form-urlencoded",
      "multipart/form-data; boundary=x",
    ]) {
      const body = JSON.stringify({ query });
      const answer = await send(`${server.url}graphql`, {
        method: "POST",
        headers: { "Content-Type": type },
        body,
      });
      expect(answer.status).toBe(400);
    }
    const got = await send(`${server.url}graphql?query=${encodeURIComponent(query)}`, {
      headers: { "Apollo-Require-Preflight": "1" },
    });
    expect(got.status).toBe(405);
    expect(await countExaminations()).toBe(before);
  });

  it("[A18] tells the browser to load nothing from elsewhere, frame nothing and guess nothing", async () => {
    for (const path of ["", "healthz", "assets/main-abc123.js", "no-such.js"]) {
      const { headers } = await send(server.url + path);
      expect(headers["content-security-policy"]).toContain("default-src 'self'");
      expect(headers["content-security-policy"]).toContain("frame-ancestors 'none'");
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["referrer-policy"]).toBe("no-referrer");
    }
  });

  it("[A19] opens the client at every page, and keeps only files that never change", async () => {
    for (const path of ["", "term/tool.circular-saw", "examination/examination.x"]) {
      const page = await send(server.url + path);
      expect(page.text).toContain("<title>Scribeline</title>");
      expect(page.headers["cache-control"]).toBe("no-cache");
    }
    const { headers } = await send(`${server.url}assets/main-abc123.js`);
    expect(headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    const again = await send(server.url, {
      headers: { "If-None-Match": String((await send(server.url)).headers["etag"]) },
    });
    expect(again.status).toBe(304);
  });

  it("[A19] sends what the build compressed to who takes it, and the file to who does not", async () => {
    const address = `${server.url}assets/main-abc123.js`;
    const zipped = await send(address, { headers: { "Accept-Encoding": "gzip" } });
    expect(zipped.headers).toMatchObject({
      "content-encoding": "gzip",
      "content-type": expect.stringContaining("javascript"),
      "cache-control": "public, max-age=31536000, immutable",
      vary: "Accept-Encoding",
    });
    expect(gunzipSync(zipped.bytes).toString()).toBe("export {};");
    const smaller = await send(address, { headers: { "Accept-Encoding": "gzip, br" } });
    expect(smaller.headers).toMatchObject({ "content-encoding": "br", vary: "Accept-Encoding" });
    expect(brotliDecompressSync(smaller.bytes).toString()).toBe("export {};");
    const plain = await send(address);
    expect(plain.headers).not.toHaveProperty("content-encoding");
    expect(plain.text).toBe("export {};");
  });

  it("[A30] names the scripts of a page with its document, and with nothing else", async () => {
    const { headers } = await send(`${server.url}terms/tool.circular-saw`);
    expect(headers["link"]).toBe(
      "</assets/term-abc123.js>; rel=modulepreload, </assets/main-abc123.js>; rel=modulepreload",
    );
    for (const path of ["", "terms/tool.circular-saw/around", "assets/main-abc123.js", "healthz"])
      expect((await send(server.url + path)).headers).not.toHaveProperty("link");
  });

  describe("an answer", () => {
    const long = { query: "{ __schema { types { name description fields { name description } } } }" };
    const ask = (body: unknown, accepts?: string) =>
      post(server.url, body, accepts === undefined ? {} : { "Accept-Encoding": accepts });

    it.each([
      ["gzip, deflate, br, zstd", "br"],
      ["BR", "br"],
      ["gzip", "gzip"],
      ["gzip;q=0.5, br;q=0", "gzip"],
      ["gzip;q=0, br;q=0.000", undefined],
      ["deflate, *;q=0.1", undefined],
      ["", undefined],
      [undefined, undefined],
    ])("[A29] is compressed for who takes %s after %s", async (accepts, encoding) => {
      const plain = await ask(long);
      const answer = await ask(long, accepts);
      expect(answer.headers["content-encoding"]).toBe(encoding);
      expect(answer.headers["vary"]).toBe("Accept-Encoding");
      expect(answer.headers["content-length"]).toBe(String(answer.bytes.length));
      const text =
        encoding === "br"
          ? brotliDecompressSync(answer.bytes)
          : encoding === "gzip"
            ? gunzipSync(answer.bytes)
            : answer.bytes;
      expect(text.toString()).toBe(plain.text);
      if (encoding !== undefined) expect(answer.bytes.length).toBeLessThan(plain.bytes.length / 4);
    });

    it("[A29] that is short goes out as it is", async () => {
      const { headers, text } = await ask(TYPENAME, "gzip, br");
      expect(headers).not.toHaveProperty("content-encoding");
      expect(JSON.parse(text)).toEqual({ data: { __typename: "Query" } });
    });
  });

  it.each(["assets/main-old.js", "..%2f..%2fpackage.json", "../package.json", ".env", "%E0%A4%A"])(
    "[A19] gives nothing outside the client for /%s",
    async (path) => {
      const { status, text } = await send(server.url + path);
      expect([200, 404]).toContain(status);
      expect(text).not.toContain("dependencies");
      if (status === 200) expect(text).toContain("<title>Scribeline</title>");
    },
  );

  it("[A19] a page cannot be written", async () => {
    const { status, headers } = await send(server.url, { method: "PUT", body: "x" });
    expect({ status, allow: headers["allow"] }).toEqual({ status: 405, allow: "GET, HEAD" });
  });

  it("[A20] says that it is alive and ready", async () => {
    expect(await send(`${server.url}healthz`)).toMatchObject({ status: 200, text: '{"alive":true}\n' });
    expect(await send(`${server.url}readyz`)).toMatchObject({ status: 200, text: '{"ready":true}\n' });
  });

  it("[A10] refuses 10 MB of text as JSON, whether or not its length is told", async () => {
    const before = await countExaminations();
    const note = "x".repeat(10_000_000);
    const body = JSON.stringify({ query: CREATE, variables: { piece: { ...sawnChest, note } } });
    for (const headers of [{}, { "Transfer-Encoding": "chunked" }]) {
      const answer = await post(server.url, body, headers as Record<string, string>);
      expect(answer.status).toBe(413);
      expect(JSON.parse(answer.text)).toEqual({
        errors: [{ message: expect.stringContaining("256000 bytes"), extensions: { code: "TOO_LARGE" } }],
      });
    }
    expect(await countExaminations()).toBe(before);
    expect((await post(server.url, TYPENAME)).status).toBe(200);
  });

  it.each([
    ["{", "not JSON"],
    [Buffer.from([0x7b, 0xff, 0x7d]), "not UTF-8"],
    ["[".repeat(100_000), "not JSON"],
  ])("[A10] refuses a body that cannot be read", async (body, why) => {
    const { status, text } = await post(server.url, body);
    expect(status).toBe(400);
    expect(JSON.parse(text).errors[0].message).toContain(why);
  });

  it("[A11] refuses several operations in one request", async () => {
    const { status } = await post(server.url, [TYPENAME, TYPENAME]);
    expect(status).toBe(400);
  });

  it("[A12] tells the cost of an operation", async () => {
    const { headers } = await post(server.url, { query: "{ terms(first: 20) { edges { node { id } } } }" });
    expect(headers["scribeline-cost"]).toBe("41");
  });
});

describe("a server that stops", () => {
  it("[A21] answers what was asked, closes its store, and does not wait for kept connections", async () => {
    let isClosed = false;
    const reached = Promise.withResolvers<void>();
    const held = Promise.withResolvers<void>();
    const base = openMemoryStore();
    const store = {
      ...base,
      listSources: async (...args: Parameters<typeof base.listSources>) => {
        reached.resolve();
        await held.promise;
        return base.listSources(...args);
      },
      close: async () => {
        isClosed = true;
      },
    };
    const server = await openHttp([sawGraph], {}, store);
    const agent = new Agent({ keepAlive: true });
    const asked = send(`${server.url}graphql`, {
      ...{ agent, method: "POST", headers: { "Content-Type": "application/json" } },
      body: JSON.stringify({ query: "{ sources { totalCount } }" }),
    });
    await reached.promise;
    const stopped = server.stop();
    expect(isClosed).toBe(false);
    held.resolve();
    expect((await asked).text).toContain('"totalCount":1');
    await stopped;
    expect(isClosed).toBe(true);
    await expect(send(`${server.url}healthz`)).rejects.toThrow("ECONNREFUSED");
    agent.destroy();
  }, 30_000);

  it("[A20] [H2] is not ready when its store fails, and says so", async () => {
    const base = openMemoryStore();
    const store = { ...base, newestRevision: () => Promise.reject(new Error("gone")) };
    const server = await openHttp([], { mirror: false }, store);
    expect(await send(`${server.url}readyz`)).toMatchObject({
      status: 503,
      text: '{"ready":false,"not":{"store":"does not answer"}}\n',
    });
    expect((await send(`${server.url}healthz`)).status).toBe(200);
    await server.stop();
  });

  it("[A13] gives up what takes longer than the deadline, and says so", async () => {
    const base = openMemoryStore();
    let asked = 0;
    const store = {
      ...base,
      terms: (...args: Parameters<typeof base.terms>) =>
        asked++ === 0 ? base.terms(...args) : new Promise<never>(() => {}),
    };
    const server = await openHttp([sawGraph], { deadline: 1500, mirror: false }, store);
    const { text } = await post(server.url, {
      query: '{ term(id: "region.london") { label broader { label broader { label } } } }',
    });
    expect(JSON.parse(text)).toMatchObject({
      data: { term: { label: "London", broader: null } },
      errors: [{ extensions: { code: "DEADLINE_EXCEEDED" } }],
    });
    expect(server.logged).toEqual([]);
    await server.stop();
  });

  it("[A19] says how to build the client where there is none", async () => {
    const server = await openHttp([], { webFolder: "/no/such/folder" });
    const { status, text } = await send(server.url);
    expect(status).toBe(404);
    expect(text).toContain("npm run build");
    await server.stop();
  });
});
