import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ACCOUNT_ACTIONS, OPEN_ACTIONS } from "#server/api/account/account-actions.ts";
import { cookieOf, openHouse, PASSWORD, refusals } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

const TYPENAME = { query: "{ __typename }" };
let house: Awaited<ReturnType<typeof openHouse>>;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.stop());

describe("the first owner", () => {
  it("[C3] comes in by a secret that the log told, which serves once", async () => {
    expect(await house.who(house.owner)).toMatchObject({ role: "owner", via: "session" });
    const again = { secret: house.firstSecret, signInName: "eve", name: "Eve", password: PASSWORD };
    expect(refusals(await house.act("accept-invitation", again))).toEqual(["LINK_USED_UP"]);
    expect(house.logged.filter(({ event }) => event === "first owner").length).toBe(1);
  });
});

describe("an invitation", () => {
  it("[C4] gives the role it was made for, once, and of two who take it at the same time to one", async () => {
    const secret = await house.invited("contributor");
    const take = (name: string) =>
      house.act("accept-invitation", { secret, signInName: name, name, password: PASSWORD });
    const both = await Promise.all([take("bea"), take("bob")]);
    const [won, lost] = both[0].status === 200 ? both : both.toReversed();
    if (won === undefined || lost === undefined) throw new Error("Two were sent");
    expect(await house.who(cookieOf(won))).toMatchObject({ role: "contributor" });
    expect(refusals(lost)).toEqual(["LINK_USED_UP"]);
  });

  it("[C4] refuses a forged one, a weak password and a name that is taken, however it is spelled", async () => {
    const made = { signInName: "cleo", name: "Cleo", password: PASSWORD };
    expect(refusals(await house.act("accept-invitation", { ...made, secret: "x".repeat(43) }))).toEqual([
      "LINK_USED_UP",
    ]);
    const secret = await house.invited("reader");
    expect(
      refusals(await house.act("accept-invitation", { ...made, secret, password: "password1234" })),
    ).toEqual(["WEAK_PASSWORD"]);
    expect(refusals(await house.act("accept-invitation", { ...made, secret, signInName: " ＡDA " }))).toEqual(
      ["NAME_TAKEN"],
    );
    expect((await house.act("accept-invitation", { ...made, secret })).status).toBe(200);
  });
});

describe("a session", () => {
  const signIn = (signInName: string, password = PASSWORD) => house.act("sign-in", { signInName, password });

  it("[C6] is a new one at each sign-in, in a cookie that no script reads, and kept as a hash", async () => {
    const first = await signIn("ada");
    const [set = ""] = first.headers["set-cookie"] ?? [];
    expect(set).toMatch(/^scribeline=[\w-]{43}; Path=\/; Max-Age=604800; HttpOnly; SameSite=Lax$/);
    expect(cookieOf(await signIn("ADA"))).not.toEqual(cookieOf(first));
    const kept: unknown[] = [];
    for await (const record of house.store.dump()) kept.push(record);
    const secret = cookieOf(first).Cookie.split("=")[1] ?? "";
    expect(JSON.stringify(kept)).not.toContain(secret);
    expect(JSON.stringify(kept)).not.toContain(PASSWORD);
  });

  it("[C6] over HTTPS is bound to the host, and is another than over HTTP", async () => {
    const proxied = await openHouse({ origins: ["https://graph.museum.example"] });
    const Host = "graph.museum.example";
    try {
      const answer = await proxied.act("sign-in", { signInName: "ada", password: PASSWORD }, { Host });
      expect(answer.headers["set-cookie"]?.[0]).toMatch(/^__Host-scribeline=.*; Path=\/; .*; Secure$/);
      expect(await proxied.who({ ...cookieOf(answer), Host })).toMatchObject({ role: "owner" });
      expect(await proxied.who(cookieOf(answer))).toBeNull();
      expect(await proxied.who({ ...proxied.owner, Host })).toBeNull();
    } finally {
      await proxied.stop();
    }
  });

  it("[C6] ends at a sign-out, one by one, and all at once with a new password", async () => {
    const dora = await house.join("reader", "dora");
    const [second, third] = [cookieOf(await signIn("dora")), cookieOf(await signIn("dora"))];
    await house.act("sign-out", {}, second);
    expect(await house.who(second)).toBeNull();
    const mine = JSON.parse((await house.act("mine", {}, dora)).text);
    const other = mine.sessions.find(({ isThis }: { isThis: boolean }) => !isThis);
    expect(mine.sessions.length).toBe(2);
    await house.act("end-session", { id: other.id }, dora);
    expect(await house.who(third)).toBeNull();
    const fourth = cookieOf(await signIn("dora"));
    const wrong = { before: "not what it was", password: "five oak boards, two saws" };
    expect(refusals(await house.act("change-password", wrong, dora))).toEqual(["SIGN_IN_REFUSED"]);
    const right = { ...wrong, before: PASSWORD };
    expect((await house.act("change-password", right, dora)).status).toBe(200);
    expect([await house.who(dora), await house.who(fourth)]).toEqual([null, null]);
    expect(refusals(await signIn("dora"))).toEqual(["SIGN_IN_REFUSED"]);
    expect((await signIn("dora", right.password)).status).toBe(200);
  });

  it("[C6] of somebody else cannot be ended, and is as if it were not there", async () => {
    const mine = JSON.parse((await house.act("mine", {}, house.owner)).text);
    const finn = await house.join("reader", "finn");
    const tried = await house.act("end-session", { id: mine.sessions[0].id }, finn);
    expect(refusals(tried)).toEqual(["UNKNOWN_SESSION"]);
    expect(await house.who(house.owner)).toMatchObject({ role: "owner" });
  });

  it("[C8] answers a wrong name like a wrong password, and makes whoever fails often wait", async () => {
    await house.join("reader", "gwen");
    const [unknown, wrong] = [await signIn("nobody at all"), await signIn("gwen", "wrong")];
    expect([unknown.status, unknown.text]).toEqual([wrong.status, wrong.text]);
    const answers = [];
    for (let i = 0; i < 5; i++) answers.push(refusals(await signIn("gwen", "wrong"))[0]);
    expect(answers).toEqual([...Array(4).fill("SIGN_IN_REFUSED"), "TRY_LATER"]);
    expect(refusals(await signIn("gwen"))).toEqual(["TRY_LATER"]);
    expect((await signIn("ada")).status).toBe(200);
  });
});

describe("a role", () => {
  it("[C5] changes at once, in a session and in a token, and who is shut out is out everywhere", async () => {
    const hal = await house.join("contributor", "hal");
    const asked = { label: "scan", role: "contributor", days: 30 };
    const token = JSON.parse((await house.act("make-token", asked, hal)).text).secret;
    const script = { Authorization: `Bearer ${token}` };
    expect(await house.who(script)).toMatchObject({ role: "contributor", via: "token" });
    const { people } = JSON.parse((await house.act("people", {}, house.owner)).text);
    const { id } = people.find(({ name }: { name: string }) => name === "hal");
    const change = (expectedVersion: number, what: object) =>
      house.act("change-person", { id, expectedVersion, ...what }, house.owner);
    await change(1, { role: "reader" });
    expect(await house.who(hal)).toMatchObject({ role: "reader" });
    expect(await house.who(script)).toMatchObject({ role: "reader" });
    expect(refusals(await change(1, { role: "owner" }))).toEqual(["CHANGED_MEANWHILE"]);
    await change(2, { state: "shut out" });
    expect([await house.who(hal), await house.who(script)]).toEqual([null, null]);
    expect(refusals(await house.act("sign-in", { signInName: "hal", password: PASSWORD }))).toEqual([
      "SIGN_IN_REFUSED",
    ]);
    await change(3, { state: "active" });
    expect(await house.who(hal)).toBeNull();
  });

  it("[C4] [C21] that is taken from an owner takes with it the links that were given", async () => {
    const house = await openHouse();
    const ivo = await house.join("owner", "ivo");
    const { id } = await house.who(ivo);
    const jan = await house.who(await house.join("reader", "jan"));
    const { secret } = JSON.parse((await house.act("invite", { role: "owner" }, ivo)).text);
    const anew = JSON.parse((await house.act("begin-anew", { id: jan.id }, ivo)).text).secret;
    const take = { signInName: "ivo2", name: "Ivo again", password: PASSWORD };
    await house.act("change-person", { id, expectedVersion: 1, state: "shut out" }, house.owner);
    expect(refusals(await house.act("accept-invitation", { ...take, secret }))).toEqual(["LINK_USED_UP"]);
    expect(refusals(await house.act("take-new-password", { secret: anew, password: PASSWORD }))).toEqual([
      "LINK_USED_UP",
    ]);
    await house.act("change-person", { id, expectedVersion: 2, state: "active" }, house.owner);
    expect((await house.act("accept-invitation", { ...take, secret })).status).toBe(200);
    await house.stop();
  });

  it("[C5] of the last owner stays", async () => {
    const { id } = await house.who(house.owner);
    const tried = await house.act("change-person", { id, expectedVersion: 1, role: "reader" }, house.owner);
    expect(refusals(tried)).toEqual(["LAST_OWNER"]);
  });
});

describe("a token", () => {
  it("[C7] is one of fifty at most", async () => {
    const nell = await house.join("contributor", "nell");
    const make = () => house.act("make-token", { label: "scan", role: "reader", days: 1 }, nell);
    for (let n = 0; n < 50; n++) expect((await make()).status).toBe(200);
    expect(refusals(await make())).toEqual(["TRY_LATER"]);
  });

  it("[C7] does no more than its maker, nothing to accounts, and ends when it is taken back", async () => {
    const ivy = await house.join("contributor", "ivy");
    const make = (role: string, days: number) => house.act("make-token", { label: "scan", role, days }, ivy);
    expect(refusals(await make("owner", 30))).toEqual(["NOT_ALLOWED"]);
    expect(refusals(await make("reader", 366))).toEqual(["WRONG_FORMAT"]);
    const { secret } = JSON.parse((await make("contributor", 30)).text);
    const script = { Authorization: `Bearer ${secret}` };
    expect((await post(house.url, TYPENAME, script)).status).toBe(200);
    const asked = { label: "more", role: "reader", days: 1 };
    expect(refusals(await house.act("make-token", asked, script))).toEqual(["NOT_ALLOWED"]);
    expect(refusals(await house.act("mine", {}, script))).toEqual(["NOT_ALLOWED"]);
    const { tokens } = JSON.parse((await house.act("mine", {}, ivy)).text);
    expect(JSON.stringify(tokens)).not.toContain(secret);
    await house.act("take-back-token", { id: tokens[0].id }, ivy);
    expect((await post(house.url, TYPENAME, script)).status).toBe(401);
  });

  it("[C7] that is forged lets nobody in, whatever cookie stands beside it", async () => {
    for (const token of ["scribeline_x", "x".repeat(5000), "..", "", PASSWORD])
      expect(await house.who({ Authorization: `Bearer ${token}`, ...house.owner })).toBeNull();
    // What a proxy asked for itself is none of ours.
    expect(await house.who({ Authorization: "Basic YWRhOng=", ...house.owner })).not.toBeNull();
  });
});

describe("what is asked from elsewhere", () => {
  it.each([
    [{ Origin: "https://evil.example" }, 403],
    [{ "Sec-Fetch-Site": "cross-site" }, 403],
    [{ "Sec-Fetch-Site": "same-site" }, 403],
    [{ "Content-Type": "text/plain" }, 415],
  ])("[C6] %j with somebody's cookie is refused with %i", async (headers, status) => {
    expect((await house.act("invite", { role: "owner" }, { ...house.owner, ...headers })).status).toBe(
      status,
    );
  });
});

describe("the audit", () => {
  it("[C9] is for owners, names who did what, and holds no secret, name or address in the ledger", async () => {
    const jo = await house.join("reviewer", "Josephine");
    expect(refusals(await house.act("audit", {}, jo))).toEqual(["NOT_ALLOWED"]);
    await house.act("sign-in", { signInName: "josephine", password: "not it at all" });
    const { entries } = JSON.parse((await house.act("audit", {}, house.owner)).text);
    expect(entries[0]).toMatchObject({ did: "refuse sign-in", aboutName: "Josephine", by: "program" });
    expect(entries[1]).toMatchObject({ did: "refuse to audit", aboutName: "Josephine", by: "program" });
    expect(entries[2]).toMatchObject({ did: "accept invitation", byName: "Josephine" });
    const ledger = JSON.stringify(await house.store.writesAfter(0, 10_000));
    for (const told of [/josephine/i, /"ada"/i, /127\.0\.0\.1/, new RegExp(house.firstSecret)])
      expect(ledger).not.toMatch(told);
  });
});

describe("every action on accounts", () => {
  const others = Object.keys(ACCOUNT_ACTIONS).filter((action) => !OPEN_ACTIONS.includes(action));
  const input = {
    ...{ id: "person.x", expectedVersion: 1, role: "owner", state: "active", label: "x", days: 1, before: 2 },
    ...{ password: PASSWORD },
  };

  it.each(others)("[C10] %s is nothing for nobody", async (action) => {
    const answer = await house.act(action, { ...input, before: "x" });
    expect([answer.status, refusals(answer)]).toEqual([401, ["NOT_SIGNED_IN"]]);
  });

  it("[C10] a reader manages no people and reads no audit", async () => {
    const kim = await house.join("reader", "kim");
    for (const action of ["invite", "change-person", "audit"]) {
      const answer = await house.act(action, input, kim);
      expect([action, answer.status, refusals(answer)]).toEqual([action, 403, ["NOT_ALLOWED"]]);
    }
  });

  it("[C10] is refused with what is wrong where the input is odd, and never is a defect", async () => {
    const odd = [null, [], "x", 1, {}, { signInName: 1 }, { __proto__: {} }, { password: "x".repeat(2000) }];
    for (const action of [...Object.keys(ACCOUNT_ACTIONS), "constructor", "", "../graphql"])
      for (const value of odd) {
        if (["sign-out"].includes(action)) continue;
        expect((await house.act(action, value, house.owner)).status).toBeLessThan(500);
      }
    expect(house.logged.filter(({ level }) => level === "error")).toEqual([]);
  });
});
