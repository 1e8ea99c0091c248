import { once } from "node:events";
import { connect as connectTo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { post, send } from "#tests/support/open-http.ts";
import { openLiveSocket, openSocket, type Socket } from "#tests/support/open-socket.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";

const NEWS = "subscription ($since: Int) { news(since: $since) { sequence } }";
const PRESENCE =
  'subscription { presence(examination: "examination.x") { others { isYou name isEditing } } }';

let house: Awaited<ReturnType<typeof openHouse>>;
let reader: Cookie;
const open: Socket[] = [];
beforeAll(async () => {
  house = await openHouse();
  reader = await house.join("reader", "rita");
});
afterAll(async () => {
  for (const socket of open) socket.close();
  await house.stop();
});

const connect = async (headers: Record<string, string> = reader): Promise<Socket> => {
  const socket = await openLiveSocket(house.url, headers);
  open.push(socket);
  return socket;
};
const follow = async (headers?: Record<string, string>): Promise<Socket> => {
  const socket = await connect(headers);
  socket.subscribe("1", NEWS);
  expect(await socket.next()).toMatchObject({ type: "next" });
  return socket;
};
const body = async (cookie: Cookie, action: string, input: object = {}) =>
  JSON.parse((await house.act(action, input, cookie)).text);
const personOf = async (cookie: Cookie): Promise<string> => (await house.who(cookie)).id;
const create = async (cookie: Cookie) => {
  const query = "mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) { __typename } }";
  const { text } = await post(house.url, { query, variables: { piece: sawnChest } }, cookie);
  return JSON.parse(text).data.done.__typename;
};

describe("[Z3] a live connection", () => {
  it.each<[string, number, Record<string, string>]>([
    ["nobody", 401, {}],
    ["who made a session up", 401, { Cookie: `scribeline=${"a".repeat(43)}` }],
    ["who made a token up", 401, { Authorization: `Bearer ${"a".repeat(43)}` }],
    ["a page of another site", 403, { Origin: "https://elsewhere.example" }],
    ["a page of another port of this machine", 403, { Origin: "http://127.0.0.1:1" }],
    ["a page inside another", 403, { "Sec-Fetch-Site": "cross-site" }],
    ["who calls the server by another name", 421, { Host: "elsewhere.example" }],
  ])("is not given to %s", async (_, status, headers) => {
    const cookie = status === 401 ? {} : reader;
    await expect(openSocket(house.url, { ...cookie, ...headers })).rejects.toThrow(`status ${status}`);
  });

  it("leaves nothing open where it is refused, though the other side does not close", async () => {
    const { port } = new URL(house.url);
    const socket = connectTo({ port: Number(port), host: "127.0.0.1", allowHalfOpen: true });
    let told = "";
    socket.setEncoding("utf8").on("data", (text: string) => {
      told += text;
    });
    socket.write(
      [
        ...["GET /graphql HTTP/1.1", `Host: 127.0.0.1:${port}`, "Connection: Upgrade", "Upgrade: websocket"],
        ...["Sec-WebSocket-Version: 13", "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ=="],
        ...["Sec-WebSocket-Protocol: graphql-transport-ws", "", ""],
      ].join("\r\n"),
    );
    await once(socket, "end");
    expect(told).toMatch(/^HTTP\/1\.1 401 /);
    // What still arrives is answered by a reset: the server holds the connection no more.
    const failures: Error[] = [];
    socket.on("error", (failure) => failures.push(failure));
    const closed = new Promise((resolve) => socket.once("close", resolve));
    const sending = setInterval(() => socket.write("x"), 20);
    await closed;
    clearInterval(sending);
    expect(failures.join()).toMatch(/EPIPE|ECONNRESET/);
  });

  it("is not given under another protocol", async () => {
    await expect(openSocket(house.url, reader, "graphql-ws")).rejects.toThrow("status 400");
  });

  it("is given to our own page, and to a script with a token", async () => {
    await follow({ ...reader, Origin: house.url.slice(0, -1), "Sec-Fetch-Site": "same-origin" });
    const { secret } = await body(house.owner, "make-token", { label: "script", role: "reader", days: 1 });
    const socket = await follow({ Authorization: `Bearer ${secret}` });
    const [{ id }] = (await body(house.owner, "mine")).tokens;
    await house.act("take-back-token", { id }, house.owner);
    expect((await socket.closed).code).toBe(4403);
  });

  it("is not given more than thirty times to one person", async () => {
    const many = await house.join("reader", "manuela");
    const sockets = await Promise.all(Array.from({ length: 30 }, () => openSocket(house.url, many)));
    await expect(openSocket(house.url, many)).rejects.toThrow("status 429");
    sockets[0]?.close();
    await sockets[0]?.closed;
    await expect
      .poll(() =>
        openSocket(house.url, many).then(
          (socket) => sockets.push(socket),
          () => 0,
        ),
      )
      .toBeGreaterThan(30);
    for (const socket of sockets) socket.close();
  });

  it.each<[string, (cookie: Cookie, id: string) => Promise<unknown>]>([
    ["signs out", (cookie) => house.act("sign-out", {}, cookie)],
    ["is shut out", (_, id) => change(id, { state: "shut out" })],
    ["gets another role", (_, id) => change(id, { role: "contributor" })],
  ])("ends when the person %s, before anything else is told", async (name, happens) => {
    const cookie = await house.join("reader", name.replaceAll(" ", "-"));
    const id = await personOf(cookie);
    const socket = await follow(cookie);
    await happens(cookie, id);
    expect(await create(house.owner)).toBe("ExaminationChanged");
    const told: unknown[] = [];
    for (;;) {
      const message = await socket.next().catch(() => undefined);
      if (message === undefined) break;
      told.push(message.payload.data.news.sequence);
    }
    expect((await socket.closed).code).toBe(4403);
    const writes = await house.store.writesAfter(0, 10_000);
    const ending = writes.findLast(({ cards = [] }) => cards.some(({ kind }) => kind !== "proposal"));
    expect(told.filter((sequence) => Number(sequence) >= (ending?.sequence ?? 0))).toEqual([]);
  });
  const change = async (id: string, changed: object) => {
    const { people } = await body(house.owner, "people");
    const { version } = people.find((person: { id: string }) => person.id === id);
    const done = await body(house.owner, "change-person", { id, expectedVersion: version, ...changed });
    expect(done).not.toHaveProperty("refused");
  };

  it.each<[string, number, (socket: Socket) => void]>([
    [
      "too many messages",
      4429,
      (socket) => {
        for (let n = 0; n < 200; n++) socket.send({ type: "ping" });
      },
    ],
    ["a message that is too long", 1009, (socket) => socket.sendText("x".repeat(20_000))],
    ["bytes", 1003, (socket) => socket.sendText(Buffer.from([1, 2, 3]))],
    ["what is no message", 4400, (socket) => socket.sendText("{")],
    ["a message of another kind", 4400, (socket) => socket.send({ type: "shout" })],
    ["a second beginning", 4429, (socket) => socket.send({ type: "connection_init" })],
    [
      "one name for two subscriptions",
      4409,
      (socket) => {
        socket.subscribe("1", NEWS);
        socket.subscribe("1", NEWS);
      },
    ],
  ])("is closed on %s", async (_, code, act) => {
    const socket = await connect();
    act(socket);
    expect((await socket.closed).code).toBe(code);
  });

  it("is closed for who subscribes before it has begun, and who never begins", async () => {
    const [hasty, silent] = await Promise.all([openSocket(house.url, reader), openSocket(house.url, reader)]);
    hasty.subscribe("1", NEWS);
    expect((await hasty.closed).code).toBe(4401);
    expect((await silent.closed).code).toBe(4408);
  });

  const nested = (depth: number): string =>
    `{ news ${"{ __typename ... on News ".repeat(depth)}{ sequence }${" }".repeat(depth)} }`;
  const bomb = `subscription { news { ...f0 } } ${Array.from({ length: 30 }, (_, n) => `fragment f${n} on News { ...f${n + 1} ...f${n + 1} }`).join(" ")} fragment f30 on News { sequence }`;
  it.each<[string, string, string]>([
    ["a query", "{ terms { totalCount } }", "BAD_REQUEST"],
    ["a change", 'mutation { deleteExamination(id: "x", expectedVersion: 1) { __typename } }', "BAD_REQUEST"],
    ["what is no document", "subscription {", "GRAPHQL_PARSE_FAILED"],
    ["too many words", `subscription { news { ${"sequence ".repeat(600)} } }`, "GRAPHQL_PARSE_FAILED"],
    ["a nest of fragments", bomb, "TOO_MANY_SELECTIONS"],
    ["many selections", `subscription { news { ${"sequence ".repeat(240)} } }`, "TOO_MANY_SELECTIONS"],
    ["a deep selection", `subscription ${nested(90)}`, "GRAPHQL_PARSE_FAILED"],
    ["fields that there are not", "subscription { news { secrets } }", "GRAPHQL_VALIDATION_FAILED"],
    ["two at once", "subscription { news { sequence } b: news { sequence } }", "GRAPHQL_VALIDATION_FAILED"],
    ["the schema", "subscription { __schema { types { name } } }", "GRAPHQL_VALIDATION_FAILED"],
    ["a number that is none", "subscription { news(since: -1) { sequence } }", "BAD_USER_INPUT"],
    [
      "an id that is too long",
      `subscription { presence(examination: "${"x".repeat(201)}") { count } }`,
      "BAD_USER_INPUT",
    ],
  ])("refuses %s with a code, and goes on", async (_, query, code) => {
    const socket = await connect();
    socket.subscribe("1", query);
    const { type, payload } = await socket.next();
    const errors = type === "error" ? payload : payload.errors;
    expect(errors.map(({ extensions }: { extensions: { code: string } }) => extensions.code)).toContain(code);
    socket.subscribe("2", NEWS);
    const { id, ...after } = await socket.next();
    expect(id === "1" ? [after.type, await socket.next()] : ["complete", { id, ...after }]).toMatchObject([
      "complete",
      { id: "2", type: "next" },
    ]);
  });

  it("has twelve subscriptions at the most", async () => {
    const socket = await connect();
    for (let n = 0; n < 13; n++) socket.subscribe(`${n}`, NEWS);
    const answers = [];
    for (let n = 0; n < 13; n++) answers.push(await socket.next());
    const refused = answers.filter(({ type }) => type === "error");
    expect(refused.map(({ payload }) => payload[0].extensions.code)).toEqual(["TOO_MANY_SUBSCRIPTIONS"]);
  });

  it("leaves other wishes for another protocol unheard, and answers", async () => {
    const headers = { Connection: "Upgrade, HTTP2-Settings", Upgrade: "h2c" };
    expect((await send(`${house.url}healthz`, { headers })).status).toBe(200);
  });

  it("[Z6] tells who else is there by name to who may see it", async () => {
    const [first, second] = [await connect(), await connect(house.owner)];
    first.subscribe("p", PRESENCE);
    await first.next();
    second.subscribe("p", PRESENCE);
    const names = async (socket: Socket) => (await socket.next()).payload.data.presence.others;
    expect(await names(second)).toEqual([{ isYou: false, name: "rita", isEditing: false }]);
    expect(await names(first)).toEqual([{ isYou: false, name: "Ada", isEditing: false }]);
  });

  it("leaves nothing behind in the log, whatever was tried", () => {
    expect(house.logged.filter(({ level }) => level !== "info")).toEqual([]);
  });

  it("is told to connect again elsewhere when the server is told to stop", async () => {
    const own = await openHouse();
    const socket = await openLiveSocket(own.url, own.owner);
    const stopping = own.stop(300);
    expect((await socket.closed).code).toBe(1012);
    await expect(openSocket(own.url, own.owner)).rejects.toThrow("status 503");
    await stopping;
  });
});
