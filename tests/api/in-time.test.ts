import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { problem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type Cookie, JSON_TYPE, openHouse, refusals } from "#tests/support/open-house.ts";
import { type Sent, send } from "#tests/support/open-http.ts";

// Passwords are hashed within it, on a machine that does other things as well.
const DEADLINE = 2000;
let house: Awaited<ReturnType<typeof openHouse>>;
let [rita, cleo]: Cookie[] = [];
/** What calls of the store come to, by name; else what they come to otherwise. */
const faults = new Map<string, () => Promise<never>>();
const calls: string[] = [];
beforeAll(async () => {
  const store = openMemoryStore();
  const faulty: Store = new Proxy(store, {
    get: (target, name) => {
      const member: unknown = Reflect.get(target, name, target);
      if (typeof member !== "function") return member;
      return (...args: unknown[]) => {
        calls.push(`${String(name)} ${String(args[0])}`);
        const fault = faults.get(String(name));
        return fault ? fault() : Reflect.apply(member, target, args);
      };
    },
  });
  house = await openHouse({ deadline: DEADLINE }, faulty);
  answered(await store.commit(aCommit(adding(aTerm("tool.adze")))));
  rita = await house.join("reader", "rita");
  cleo = await house.join("contributor", "cleo");
});
afterAll(() => house.stop());

const never = () => new Promise<never>(() => {});
const during = async (name: string, fault: () => Promise<never>, ask: () => Promise<Sent>): Promise<Sent> => {
  faults.set(name, fault);
  try {
    return await ask();
  } finally {
    faults.delete(name);
  }
};
const postTo = (path: string, body: object, who = rita) =>
  send(`${house.url}${path}`, {
    ...{ method: "POST", headers: { ...JSON_TYPE, ...(who as Cookie) }, body: JSON.stringify(body) },
  });
const feed = () => send(`${house.url}feeds/all.atom`, { headers: { ...(rita as Cookie) } });
const codeOf = ({ text }: Sent) => JSON.parse(text).errors[0].extensions.code;

describe("[T5] a store that is silent", () => {
  it.each([
    ["changeAt", "the feed of all", feed],
    ["changeAt", "difference", () => postTo("chronicle/difference", { from: 1, to: 2 })],
    ["changeAt", "give", () => postTo("chronicle/give", { since: 0 })],
    ["revisions", "history", () => postTo("chronicle/history", {})],
    ["listCards", "digest", () => postTo("chronicle/digest", {})],
    ["listCards", "people", () => postTo("account/people", {})],
    ["card", "who", () => postTo("account/who", {})],
  ])("where %s does not answer, %s is given up at the deadline with 503", async (name, _, ask) => {
    const since = performance.now();
    const answer = await during(name, never, ask);
    expect([answer.status, codeOf(answer), answer.headers["retry-after"]]).toEqual([
      ...[503, "DEADLINE_EXCEEDED", "5"],
    ]);
    expect(performance.now() - since).toBeGreaterThanOrEqual(DEADLINE - 5);
    expect(house.logged.filter(({ event }) => event === "request failed")).toEqual([]);
  });

  it("holds up nobody else's reading for longer, and tells who asks for too much at once", async () => {
    const answers = await during("changeAt", never, async () => {
      const many = Array.from({ length: 14 }, feed);
      const all = await Promise.all(many);
      return { ...(all[0] as Sent), text: JSON.stringify(all.map(codeOf).sort()) };
    });
    const codes: readonly string[] = JSON.parse(answers.text);
    expect(codes.filter((code) => code === "TRY_LATER").length).toBe(2);
    expect(codes.filter((code) => code === "DEADLINE_EXCEEDED").length).toBe(12);
    expect((await feed()).status).toBe(200);
  });
});

it("[T5] a store that fails is told by its code, with 503, and stands in the log", async () => {
  const failing = async () => {
    throw new StoreFailed(problem("STORE_CORRUPT", "A page of the file is damaged."), "at page 7");
  };
  const answer = await during("changeAt", failing, feed);
  expect([answer.status, codeOf(answer)]).toEqual([503, "STORE_CORRUPT"]);
  expect(JSON.stringify(house.logged)).toContain("at page 7");
  expect(answer.text).not.toContain("page 7");
});

describe("[I7] who sends a file", () => {
  it("is looked up once, before it is read", async () => {
    calls.length = 0;
    const answer = await postTo("chronicle/take", { changes: {} }, cleo);
    expect([answer.status, refusals(answer)]).toEqual([400, ["WRONG_FORMAT"]]);
    expect(calls.filter((call) => call === "card session")).toHaveLength(1);
    expect(calls.filter((call) => call === "card person")).toHaveLength(1);
  });
});
