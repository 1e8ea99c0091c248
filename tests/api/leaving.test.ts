import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import { storeFile } from "#server/open-data.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { openDevice } from "#tests/support/device.ts";
import { type Cookie, cookieOf, openHouse, PASSWORD, refusals } from "#tests/support/open-house.ts";
import { post, type Sent } from "#tests/support/open-http.ts";
import { runNode } from "#tests/support/run-node.ts";

const NEW = "five oak boards, two saws";
const body = ({ text }: Sent) => JSON.parse(text);
let folder: string;
let house: Awaited<ReturnType<typeof openHouse>>;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "scribeline-leaving-"));
  const store = await openSqliteStore(storeFile(folder), { readOnly: false });
  if (isProblem(store)) throw new Error(store.message);
  house = await openHouse({}, store);
});
afterEach(async () => {
  await house.stop();
  rmSync(folder, { recursive: true, force: true });
});

const signIn = (signInName: string, password = PASSWORD) => house.act("sign-in", { signInName, password });
const idOf = async (cookie: Cookie): Promise<string> => (await house.who(cookie)).id;
const dumped = async (): Promise<string> => {
  const kept: unknown[] = [];
  for await (const record of house.store.dump()) kept.push(record);
  return JSON.stringify(kept);
};

describe("an account that is begun anew", () => {
  it("[C21] lets in nothing of before, and takes a new password once, which no owner chose", async () => {
    const ben = await house.join("contributor", "ben");
    const id = await idOf(ben);
    const asked = { label: "scan", role: "reader", days: 9 };
    const token = { Authorization: `Bearer ${body(await house.act("make-token", asked, ben)).secret}` };
    const { secret: seed } = body(await house.act("begin-device", { before: PASSWORD }, ben));
    await house.act("finish-device", { code: openDevice(seed).code() }, ben);
    expect(refusals(await house.act("begin-anew", { id }, ben))).toEqual(["NOT_ALLOWED"]);
    const { secret } = body(await house.act("begin-anew", { id }, house.owner));
    expect([await house.who(ben), await house.who(token)]).toEqual([null, null]);
    expect(refusals(await signIn("ben"))).toEqual(["SIGN_IN_REFUSED"]);
    const made = { secret, signInName: "eve", name: "Eve", password: NEW };
    expect(refusals(await house.act("accept-invitation", made))).toEqual(["LINK_USED_UP"]);
    const take = (password: string, shown = secret) =>
      house.act("take-new-password", { secret: shown, password });
    expect(refusals(await take("ben"))).toEqual(["WEAK_PASSWORD"]);
    expect(refusals(await take(NEW, "x".repeat(43)))).toEqual(["LINK_USED_UP"]);
    const both = await Promise.all([take(NEW), take(NEW)]);
    expect(both.filter(({ status }) => status === 200).length).toBe(1);
    expect(refusals(await take(NEW))).toEqual(["LINK_USED_UP"]);
    expect(await house.who(cookieOf(await signIn("ben", NEW)))).toMatchObject({ id, role: "contributor" });
  });

  it("[C21] holds one link at a time, and none for somebody who was shut out", async () => {
    const id = await idOf(await house.join("reader", "cay"));
    const { secret: first } = body(await house.act("begin-anew", { id }, house.owner));
    const { secret: second } = body(await house.act("begin-anew", { id }, house.owner));
    const take = (secret: string) => house.act("take-new-password", { secret, password: NEW });
    expect(refusals(await take(first))).toEqual(["LINK_USED_UP"]);
    await house.act("change-person", { id, expectedVersion: 1, state: "shut out" }, house.owner);
    expect(refusals(await take(second))).toEqual(["LINK_USED_UP"]);
  });
});

describe("a person who is erased", () => {
  it("[C22] leaves no name and nothing to sign in with, what she did stays, and the ledger verifies", async () => {
    const uma = await house.join("contributor", "Umberta-Xenia");
    const id = await idOf(uma);
    const create = `mutation { done: createExamination(piece: { title: "Chest, made up", examined: 2026, observations: [],
      parts: [], attribution: { form: "form.chest", date: "1760/1775" } }) { ... on ExaminationChanged { examination { id } } } }`;
    const examination = body(await post(house.url, { query: create }, uma)).data.done.examination.id;
    expect(await dumped()).toMatch(/umberta/i);
    const before = await house.store.newestWrite();
    expect(refusals(await house.act("erase-person", { id, expectedVersion: 7 }, house.owner))).toEqual([
      "CHANGED_MEANWHILE",
    ]);
    expect((await house.act("erase-person", { id, expectedVersion: 1 }, house.owner)).status).toBe(200);
    expect(await dumped()).not.toMatch(/umberta/i);
    expect(await house.who(uma)).toBeNull();
    expect(refusals(await signIn("umberta-xenia"))).toEqual(["SIGN_IN_REFUSED"]);
    expect(isProblem(await house.store.verify())).toBe(false);
    const deeds = (await house.store.writesAfter(0, before)).map(({ deed }) => deed);
    expect(deeds).toContainEqual(expect.objectContaining({ by: id, did: "record examination" }));
    expect((await house.store.examination(examination))?.piece.title).toBe("Chest, made up");
    const { entries } = body(await house.act("audit", {}, house.owner));
    const hers = entries.filter(({ by }: { by: string }) => by === id);
    expect(hers.length).toBeGreaterThan(1);
    for (const entry of hers) expect(entry).toMatchObject({ byName: "a former member" });
    expect(JSON.stringify(body(await house.act("people", {}, house.owner)))).not.toContain(id);
    // The name is free again, for somebody else.
    expect(await idOf(await house.join("reader", "Umberta-Xenia"))).not.toBe(id);
  });

  it("[C22] is not the only owner, not oneself without the role, and not two owners at once", async () => {
    const owner = await idOf(house.owner);
    const erase = (id: string, by: Cookie) => house.act("erase-person", { id, expectedVersion: 1 }, by);
    expect(refusals(await erase(owner, house.owner))).toEqual(["LAST_OWNER"]);
    const dee = await house.join("reviewer", "dee");
    expect(refusals(await erase(await idOf(dee), dee))).toEqual(["NOT_ALLOWED"]);
    const eli = await house.join("owner", "eli");
    const both = await Promise.all([erase(owner, eli), erase(await idOf(eli), house.owner)]);
    expect(both.filter(({ status }) => status === 200).length).toBe(1);
  });
});

describe("a house whose owners are lost", () => {
  const command = () => runNode(["server/let-owner-in.ts"], { SCRIBELINE_DATA: folder }).ended;

  it("[C23] lets in an owner by a secret that a command tells, beside a running server, once", async () => {
    const told = await command();
    expect(told.exit).toBe(0);
    const secret = told.out.trim();
    const accept = () =>
      house.act("accept-invitation", { secret, signInName: "new", name: "Nova", password: NEW });
    expect(await house.who(cookieOf(await accept()))).toMatchObject({ role: "owner" });
    expect(refusals(await accept())).toEqual(["LINK_USED_UP"]);
    const { entries } = body(await house.act("audit", {}, house.owner));
    expect(entries.map(({ did }: { did: string }) => did)).toContain("let owner in by command");
  });
});

describe("a house that never had an owner", () => {
  it("[C23] is let in by no command", async () => {
    const empty = mkdtempSync(join(tmpdir(), "scribeline-empty-"));
    try {
      const store = await openSqliteStore(storeFile(empty), { readOnly: false });
      if (isProblem(store)) throw new Error(store.message);
      await store.close();
      const told = await runNode(["server/let-owner-in.ts"], { SCRIBELINE_DATA: empty }).ended;
      expect([told.exit, told.out]).toEqual([2, ""]);
    } finally {
      rmSync(empty, { recursive: true, force: true });
    }
  });
});
