import { describe, expect, it } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { openHttp, post, type Sent, send } from "#tests/support/open-http.ts";
import { sawGraph, sawnChest } from "#tests/support/saw-graph.ts";

const TITLE = { query: "{ examinations(first: 5) { totalCount } }" };
const sequenceOf = ({ headers }: Sent): unknown => headers["scribeline-sequence"];
const codeOf = ({ text }: Sent): unknown => JSON.parse(text).errors?.[0].extensions.code;
const asked = (sequence: number | string) => ({ "Scribeline-Sequence": String(sequence) });
const CREATE = {
  query: "mutation ($piece: PieceInput!) { createExamination(piece: $piece) { __typename } }",
  variables: { piece: sawnChest },
};

describe("the number of the newest write", () => {
  it("[H4] stands in every answer of the API, also to a question that is refused", async () => {
    const server = await openHttp([sawGraph]);
    expect(sequenceOf(await post(server.url, TITLE))).toBe("1");
    expect(sequenceOf(await post(server.url, { query: "{ nothing }" }))).toBe("1");
    expect(sequenceOf(await post(server.url, TITLE, asked(2)))).toBe("1");
    expect(sequenceOf(await send(`${server.url}healthz`))).toBeUndefined();
    await server.stop();
  });

  it("[H6] in the answer to a write is that of this write", async () => {
    const server = await openHttp([sawGraph], { followEvery: 60_000 });
    for (const sequence of ["2", "3"]) {
      const created = await post(server.url, CREATE);
      expect(JSON.parse(created.text).data.createExamination.__typename).toBe("ExaminationChanged");
      expect(sequenceOf(created)).toBe(sequence);
    }
    expect(sequenceOf(await post(server.url, TITLE))).toBe("3");
    await server.stop();
  });

  it("[H5] sent along is waited for, and answered at once where it is there already", async () => {
    const store = openMemoryStore();
    const server = await openHttp([sawGraph], { longestWait: 20_000 }, store);
    expect((await post(server.url, TITLE, asked(1))).status).toBe(200);
    expect((await post(server.url, TITLE, asked(0))).status).toBe(200);
    const waits = post(server.url, { query: '{ term(id: "tool.axe") { label } }' }, asked(2));
    await new Promise((resolve) => setTimeout(resolve, 50));
    await store.commit(aCommit(adding(aTerm("tool.axe"))));
    const answer = await waits;
    expect(JSON.parse(answer.text)).toEqual({ data: { term: { label: "axe" } } });
    expect(sequenceOf(answer)).toBe("2");
    await server.stop();
  });

  it("[H5] is looked for at once, however seldom the server looks by itself", async () => {
    const store = openMemoryStore();
    const server = await openHttp([sawGraph], { longestWait: 20_000, followEvery: 60_000 }, store);
    await post(server.url, TITLE);
    await store.commit(aCommit(adding(aTerm("tool.axe"))));
    expect(sequenceOf(await post(server.url, TITLE))).toBe("1");
    expect(sequenceOf(await post(server.url, TITLE, asked(2)))).toBe("2");
    await server.stop();
  });

  it("[H5] that does not come in time is refused, with what to do", async () => {
    const server = await openHttp([sawGraph], { longestWait: 30 });
    const refused = await post(server.url, CREATE, asked(2));
    expect(refused).toMatchObject({ status: 503, headers: { "retry-after": "1" } });
    expect(codeOf(refused)).toBe("NOT_REACHED_YET");
    expect(JSON.parse(refused.text).errors[0].message).toMatch(/up to 1, and 2 was asked for. Ask again/);
    expect(sequenceOf(await post(server.url, TITLE)), "nothing was written").toBe("1");
    await server.stop();
  });

  it.each(["", "-1", "1.5", "one", "1e3", "1, 2", "9".repeat(16)])(
    "[H5] that is no number is refused: %j",
    async (text) => {
      const server = await openHttp([sawGraph]);
      const refused = await post(server.url, TITLE, asked(text));
      expect([refused.status, codeOf(refused)]).toEqual([400, "BAD_REQUEST"]);
      await server.stop();
    },
  );

  it("[H6] a write that was kept is answered as kept, whatever fails afterwards", async () => {
    const base = openMemoryStore();
    let isAway = false;
    const store: Store = {
      ...base,
      newestWrite: () => (isAway ? Promise.reject(new Error("away")) : base.newestWrite()),
      writesAfter: (...args) => (isAway ? Promise.reject(new Error("away")) : base.writesAfter(...args)),
    };
    const server = await openHttp([sawGraph], {}, store);
    isAway = true;
    const created = await post(server.url, CREATE);
    expect(JSON.parse(created.text).data.createExamination.__typename).toBe("ExaminationChanged");
    expect((await base.listExaminations({ first: 5 })).total).toBe(1);
    const ready = await send(`${server.url}readyz`);
    expect(ready).toMatchObject({
      status: 503,
      text: '{"ready":false,"not":{"writes":"does not answer"}}\n',
    });
    isAway = false;
    await expect.poll(async () => (await send(`${server.url}readyz`)).status).toBe(200);
    await server.stop();
  });
});

describe("[H2] not ready", () => {
  it("is a server that does not come to what stands in its store, and it says how far it is", async () => {
    const base = openMemoryStore();
    let isStuck = false;
    const store: Store = {
      ...base,
      writesAfter: async (...args) => (isStuck ? [] : base.writesAfter(...args)),
    };
    const server = await openHttp([sawGraph], {}, store);
    expect((await send(`${server.url}readyz`)).text).toBe('{"ready":true}\n');
    isStuck = true;
    await base.commit(aCommit(adding(aTerm("tool.axe"))));
    const behind = await send(`${server.url}readyz`);
    expect(behind.status).toBe(503);
    expect(JSON.parse(behind.text)).toEqual({
      ready: false,
      not: { writes: "knows of the writes up to 1 of 2" },
    });
    expect((await send(`${server.url}healthz`)).status).toBe(200);
    isStuck = false;
    await expect.poll(async () => (await send(`${server.url}readyz`)).status).toBe(200);
    await server.stop();
  });

  it("[H1] is a server whose store gives no answer, within a few seconds, and yet it is alive", async () => {
    const base = openMemoryStore();
    let isStuck = false;
    const store: Store = {
      ...base,
      newestRevision: () => (isStuck ? new Promise(() => {}) : base.newestRevision()),
    };
    const server = await openHttp([sawGraph], {}, store);
    isStuck = true;
    expect(JSON.parse((await send(`${server.url}readyz`)).text).not).toEqual({
      store: "gave no answer within 2000 ms",
    });
    expect((await send(`${server.url}healthz`)).status).toBe(200);
    await server.stop();
  });
});

describe("[H3] a server that is told to stop with a drain", () => {
  it("says that it is not ready, and answers on meanwhile, each time for the last time on that connection", async () => {
    const server = await openHttp([sawGraph]);
    const stopped = server.stop(400);
    const ready = await send(`${server.url}readyz`);
    expect(ready).toMatchObject({ status: 503, headers: { connection: "close" } });
    expect(JSON.parse(ready.text)).toEqual({ ready: false, not: { end: "is about to stop" } });
    expect((await send(`${server.url}healthz`)).status).toBe(200);
    expect(await post(server.url, TITLE)).toMatchObject({ status: 200, headers: { connection: "close" } });
    await stopped;
    await expect(send(`${server.url}healthz`)).rejects.toThrow("ECONNREFUSED");
  });

  it("ends at once when it is told again without one", async () => {
    const server = await openHttp([sawGraph]);
    const since = performance.now();
    const stopped = server.stop(60_000);
    await server.stop();
    await stopped;
    expect(performance.now() - since).toBeLessThan(20_000);
  });
});
