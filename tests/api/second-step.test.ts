import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openDevice } from "#tests/support/device.ts";
import { type Cookie, cookieOf, openHouse, PASSWORD, refusals } from "#tests/support/open-house.ts";
import { post, type Sent } from "#tests/support/open-http.ts";

let house: Awaited<ReturnType<typeof openHouse>>;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.stop());

const body = ({ text }: Sent) => JSON.parse(text);
const signIn = (signInName: string, more: object = {}) =>
  house.act("sign-in", { signInName, password: PASSWORD, ...more });

/** Somebody who signed in, with a device that is asked for. */
async function joinWithDevice(name: string) {
  const first = await house.join("contributor", name);
  const begun = body(await house.act("begin-device", { before: PASSWORD }, first));
  const device = openDevice(begun.secret);
  const used = device.code();
  const finished = await house.act("finish-device", { code: used }, first);
  return { first, device, begun, used, codes: body(finished).codes as readonly string[] };
}

describe("a second step", () => {
  it("[C13] is asked for after the right password alone, and lets in with the code of now", async () => {
    const { device, begun } = await joinWithDevice("ann");
    expect(begun.address).toContain(`secret=${begun.secret}&`);
    expect(refusals(await signIn("ann", { password: "not it at all" }))).toEqual(["SIGN_IN_REFUSED"]);
    const asked = await signIn("ann");
    expect([asked.status, refusals(asked), asked.headers["set-cookie"]]).toEqual([
      403,
      ["SECOND_STEP_NEEDED"],
      undefined,
    ]);
    expect(refusals(await signIn("ann", { code: device.code(5) }))).toEqual(["SIGN_IN_REFUSED"]);
    expect(await house.who(cookieOf(await signIn("ann", { code: device.code(1) })))).not.toBeNull();
  });

  it("[C13] takes no code twice, nor one of before, and of two at the same time one gets in", async () => {
    const { device, used } = await joinWithDevice("ben");
    expect(refusals(await signIn("ben", { code: used }))).toEqual(["SIGN_IN_REFUSED"]);
    const code = device.code(1);
    const both = await Promise.all([signIn("ben", { code }), signIn("ben", { code })]);
    expect(both.map(({ status }) => status).sort((a, b) => a - b)[0]).toBe(200);
    expect(both.filter(({ status }) => status === 200).length).toBe(1);
    expect(refusals(await signIn("ben", { code }))).toEqual(["SIGN_IN_REFUSED"]);
  });

  it("[C13] is not asked for before the device gave a code, and a wrong one does not begin it", async () => {
    const cal = await house.join("contributor", "cal");
    expect(refusals(await house.act("begin-device", { before: "not it at all" }, cal))).toEqual([
      "SIGN_IN_REFUSED",
    ]);
    const { secret } = body(await house.act("begin-device", { before: PASSWORD }, cal));
    expect(refusals(await house.act("finish-device", { code: openDevice(secret).code(9) }, cal))).toEqual([
      "SIGN_IN_REFUSED",
    ]);
    expect((await signIn("cal")).status).toBe(200);
  });

  it("[C13] makes whoever guesses codes wait like whoever guesses passwords, and the audit tells it", async () => {
    const { first, device } = await joinWithDevice("dan");
    for (let i = 0; i < 5; i++) await signIn("dan", { code: "000000" });
    expect(refusals(await signIn("dan", { code: device.code() }))).toEqual(["TRY_LATER"]);
    expect(refusals(await house.act("change-password", { before: PASSWORD, password: "x" }, first))).toEqual([
      "TRY_LATER",
    ]);
    const { entries } = body(await house.act("audit", {}, house.owner));
    expect(entries[0]).toMatchObject({ did: "refuse second step", aboutName: "dan" });
  });
});

describe("recovery codes", () => {
  it("[C14] let in once each, however they are typed, and are kept as hashes", async () => {
    const { codes } = await joinWithDevice("eva");
    expect(new Set(codes).size).toBe(10);
    const [one = "", two = ""] = codes;
    expect(one).toMatch(/^(?:[a-z2-7]{4}-){5}[a-z2-7]{4}$/);
    expect((await signIn("eva", { code: ` ${one.toUpperCase().replaceAll("-", " ")}` })).status).toBe(200);
    expect(refusals(await signIn("eva", { code: one }))).toEqual(["SIGN_IN_REFUSED"]);
    const again = cookieOf(await signIn("eva", { code: two }));
    expect(body(await house.act("mine", {}, again))).toMatchObject({ hasDevice: true, recoveryCodes: 8 });
    const kept: unknown[] = [];
    for await (const record of house.store.dump()) kept.push(record);
    for (const code of codes) {
      expect(JSON.stringify(kept)).not.toContain(code);
      expect(JSON.stringify(kept)).not.toContain(code.replaceAll("-", ""));
    }
  });

  it("[C14] of before hold no more once new ones are made, nor those of somebody else", async () => {
    const { first, device, codes } = await joinWithDevice("fay");
    const { codes: others } = await joinWithDevice("gus");
    const renewed = await house.act(
      "renew-recovery-codes",
      { before: PASSWORD, code: device.code(1) },
      first,
    );
    expect(renewed.status).toBe(200);
    for (const code of [codes[3], others[3]])
      expect(refusals(await signIn("fay", { code }))).toEqual(["SIGN_IN_REFUSED"]);
    expect((await signIn("fay", { code: body(renewed).codes[0] })).status).toBe(200);
  });
});

describe("a change of what one signs in with", () => {
  const isIn = async (cookie: Cookie) => (await house.who(cookie)) !== null;

  it("[C15] takes password and code, and ends the other sessions", async () => {
    const hugo = await house.join("contributor", "hugo");
    const elsewhere = cookieOf(await signIn("hugo"));
    const { secret } = body(await house.act("begin-device", { before: PASSWORD }, hugo));
    const device = openDevice(secret);
    const { codes } = body(await house.act("finish-device", { code: device.code() }, hugo));
    expect([await isIn(hugo), await isIn(elsewhere)]).toEqual([true, false]);
    for (const [action, more] of [
      ["remove-device", {}],
      ["renew-recovery-codes", {}],
      ["change-password", { password: "five oak boards, two saws" }],
      ["begin-device", {}],
    ] as const) {
      const alone = await house.act(action, { before: PASSWORD, ...more }, hugo);
      expect([action, refusals(alone)]).toEqual([action, ["SECOND_STEP_NEEDED"]]);
    }
    const second = cookieOf(await signIn("hugo", { code: codes[0] }));
    expect(refusals(await house.act("begin-device", { before: PASSWORD, code: codes[1] }, hugo))).toEqual([
      "WRONG_STATE",
    ]);
    const removed = await house.act("remove-device", { before: PASSWORD, code: device.code(1) }, hugo);
    expect([removed.status, await isIn(hugo), await isIn(second)]).toEqual([200, true, false]);
    expect((await signIn("hugo")).status).toBe(200);
  });
});

describe("a house where a role asks for two steps", () => {
  it("[C16] lets who signed in with one read and see to the account, and no more, until there is a device", async () => {
    const strict = await openHouse({ secondStepFrom: "contributor" });
    try {
      expect(await strict.who(strict.owner)).toMatchObject({ role: "owner", isHeld: true });
      expect((await post(strict.url, { query: "{ terms { totalCount } }" }, strict.owner)).status).toBe(200);
      for (const [action, input] of [
        ["invite", { role: "reader" }],
        ["audit", {}],
        ["make-token", { label: "x", role: "owner", days: 3 }],
      ] as const)
        expect(refusals(await strict.act(action, input, strict.owner))).toEqual(["SECOND_STEP_NEEDED"]);
      const { secret } = body(await strict.act("begin-device", { before: PASSWORD }, strict.owner));
      await strict.act("finish-device", { code: openDevice(secret).code() }, strict.owner);
      expect(await strict.who(strict.owner)).not.toHaveProperty("isHeld");
      const reader = await strict.join("reader", "ray");
      expect(await strict.who(reader)).not.toHaveProperty("isHeld");
    } finally {
      await strict.stop();
    }
  });
});
