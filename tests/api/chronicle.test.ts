import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CHRONICLE_ACTIONS } from "#server/api/chronicle/chronicle-actions.ts";
import { id } from "#server/domain/ids.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type Cookie, JSON_TYPE, openHouse, refusals } from "#tests/support/open-house.ts";
import { openHttp, send } from "#tests/support/open-http.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const chest = id<"examination">("examination.chest");
let house: Awaited<ReturnType<typeof openHouse>>;
let reader: Cookie;
beforeAll(async () => {
  house = await openHouse();
  reader = await house.join("reader", "rita");
  answered(await house.store.createExamination(chest, aPiece(), "2026-11-25T10:00:00.000Z"));
});
afterAll(() => house.stop());

const ask = (action: string, body: unknown = {}, headers: Record<string, string> = {}) =>
  send(`${house.url}chronicle/${action}`, {
    ...{ method: "POST", headers: { ...JSON_TYPE, ...headers } },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
const actions = [...Object.keys(CHRONICLE_ACTIONS), "prove"];

describe("[I7] the chronicle where one has to sign in", () => {
  it.each(actions)("does not answer nobody: %s", async (action) => {
    const answer = await ask(action);
    expect([answer.status, refusals(answer)]).toEqual([401, ["NOT_SIGNED_IN"]]);
  });

  it.each([
    ["take", 20_000_001, {}, 401],
    ["take", 300_000, {}, 401],
    ["history", 300_000, {}, 413],
    ["examine-again", 20_000_001, "reader", 413],
  ])("reads no more of %s than there is reason to: %i bytes", async (action, bytes, who, status) => {
    const answer = await ask(action, `"${"x".repeat(bytes)}"`, who === "reader" ? reader : {});
    expect(answer.status).toBe(status);
  });

  it.each(["sign-checkpoint", "renew-key", "sign-report"])("lets no reader through: %s", async (action) => {
    const before = await house.store.newestWrite();
    const answer = await ask(action, { examination: chest }, reader);
    expect([answer.status, refusals(answer)]).toEqual([403, ["NOT_ALLOWED"]]);
    expect(await house.store.newestWrite()).toBe(before);
  });

  it.each(actions)("answers wrong and hostile input without a 5xx: %s", async (action) => {
    for (const body of [{}, [], 7, null, { id: 7, examination: {}, checkpoint: "<script>", after: [] }]) {
      const { status, text } = await ask(action, body, house.owner);
      expect([status < 500, text]).toEqual([true, expect.any(String)]);
    }
    expect((await ask(action, "{", house.owner)).status).toBe(400);
    expect((await ask(action, "{}", { ...house.owner, "Content-Type": "text/plain" })).status).toBe(415);
    expect((await ask(action, {}, { ...house.owner, Origin: "https://elsewhere.example" })).status).toBe(403);
    expect((await send(`${house.url}chronicle/${action}`, { headers: house.owner })).status).toBe(405);
  });

  it("has no other actions", async () => {
    for (const action of ["none", "toString", "__proto__"])
      expect((await ask(action, {}, house.owner)).status).toBe(404);
  });

  it("[I1] [I3] signs a checkpoint, hands it out, and holds one that comes back against the store", async () => {
    const { checkpoint } = JSON.parse((await ask("sign-checkpoint", {}, house.owner)).text);
    const listed = JSON.parse((await ask("checkpoints", {}, reader)).text);
    expect(listed.checkpoints[0]).toMatchObject({ holds: true, checkpoint });
    expect(JSON.parse((await ask("check-checkpoint", { checkpoint }, reader)).text)).toMatchObject({
      holds: true,
    });
    const forged = { ...checkpoint, head: "f".repeat(64) };
    expect(JSON.parse((await ask("check-checkpoint", { checkpoint: forged }, reader)).text)).toMatchObject({
      holds: false,
    });
    const wrong = await ask("check-checkpoint", { checkpoint: { ...checkpoint, more: 1 } }, reader);
    expect([wrong.status, refusals(wrong)]).toEqual([400, ["WRONG_FORMAT"]]);
  });

  it("[I5] [I6] signs a report and examines it again, from the house and from its file", async () => {
    const listed = JSON.parse((await ask("sign-report", { examination: chest }, house.owner)).text);
    const again = await ask("examine-again", { id: listed.id }, reader);
    expect(JSON.parse(again.text)).toMatchObject({ isSame: true, now: listed.sha256 });
    const report = JSON.parse((await ask("signed-report", { id: listed.id }, reader)).text);
    expect(JSON.parse((await ask("examine-again", { report }, reader)).text)).toMatchObject({ isSame: true });
    const forged = await ask("examine-again", { report: { ...report, by: "person.x" } }, reader);
    expect(refusals(forged)).toEqual(["BROKEN_SEAL"]);
    expect(refusals(await ask("signed-report", { id: "none" }, reader))).toEqual(["UNKNOWN_REPORT"]);
  });

  it("[I4] proves the history line by line, for a reader too", async () => {
    const { status, headers, text } = await ask("prove", {}, reader);
    const lines = text
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect([status, headers["content-type"]]).toEqual([200, "application/jsonl; charset=utf-8"]);
    expect(lines[0]).toEqual({ progress: "Begun" });
    expect(lines.at(-1)).toMatchObject({ proven: { revisions: 1 } });
  });
});

it("[I4] tells all who ask at the same time of one proof, and where it is broken", async () => {
  let runs = 0;
  const held = Promise.withResolvers<void>();
  const store = openMemoryStore();
  const broken = {
    ...store,
    verify: async () => {
      runs++;
      await held.promise;
      return { problem: true as const, code: "STORE_CORRUPT" as const, message: "Revision 3.", path: [3] };
    },
  };
  const server = await openHttp([sawGraph], {}, broken);
  try {
    const options = { method: "POST", headers: JSON_TYPE, body: "{}" };
    // The beginning of each answer is there while the proof is not.
    const both = await Promise.all([1, 2].map(() => fetch(`${server.url}chronicle/prove`, options)));
    held.resolve();
    const texts = await Promise.all(both.map((answer) => answer.text()));
    expect(runs).toBe(1);
    for (const text of texts)
      expect(JSON.parse(text.trim().split("\n").at(-1) ?? "")).toMatchObject({ broken: { path: [3] } });
  } finally {
    await server.stop();
  }
});
