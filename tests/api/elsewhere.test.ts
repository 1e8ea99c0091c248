import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openForgingProvider } from "#tests/support/forging-provider.ts";
import { type Cookie, cookieOf, openHouse, PASSWORD, refusals } from "#tests/support/open-house.ts";
import type { Sent } from "#tests/support/open-http.ts";
import { CLIENT, followRedirects, openTestProvider } from "#tests/support/open-provider.ts";

type House = Awaited<ReturnType<typeof openHouse>>;
const body = ({ text }: Sent) => JSON.parse(text);
const originOf = (house: House) => house.url.slice(0, -1);

/** The way to the provider and back; `way` is what the browser keeps. */
async function goElsewhere(
  house: House,
  action = "begin-elsewhere",
  input: object = {},
  cookie: object = {},
) {
  const begun = await house.act(action, { origin: originOf(house), ...input }, { ...cookie });
  const { address, way } = body(begun);
  return { way, address, cameBackTo: await followRedirects(address) };
}

const finish = (house: House, came: { way: string; cameBackTo: string }, cookie: object = {}) =>
  house.act("finish-elsewhere", { way: came.way, cameBackTo: came.cameBackTo }, { ...cookie });

describe("another provider", () => {
  let house: House;
  let provider: Awaited<ReturnType<typeof openTestProvider>>;
  let ann: Cookie;
  beforeAll(async () => {
    provider = await openTestProvider(() => [`${originOf(house)}/sign-in/elsewhere`]);
    house = await openHouse({ provider: { ...CLIENT, issuer: provider.issuer, name: "Elsewhere" } });
    provider.begin();
    ann = await house.join("contributor", "ann");
  });
  afterAll(async () => {
    await house.stop();
    await provider.stop();
  });

  it("[C19] signs in nobody who has not linked it, and whoever has, as the person it is", async () => {
    expect(body(await house.act("who"))).toMatchObject({ provider: "Elsewhere" });
    expect(refusals(await finish(house, await goElsewhere(house)))).toEqual(["SIGN_IN_REFUSED"]);
    const wrong = { origin: originOf(house), before: "not it at all" };
    expect(refusals(await house.act("link-elsewhere", wrong, ann))).toEqual(["SIGN_IN_REFUSED"]);
    const linking = await goElsewhere(house, "link-elsewhere", { before: PASSWORD }, ann);
    expect(body(await finish(house, linking, ann))).toEqual({ linked: true });
    const came = await finish(house, await goElsewhere(house));
    expect(await house.who(cookieOf(came))).toMatchObject({ role: "contributor", via: "session" });
    expect((await house.who(cookieOf(came))).id).toBe((await house.who(ann)).id);
  });

  it("[C19] goes by the subject that the issuer gives, which stands nowhere in the ledger", async () => {
    provider.signedIn.subject = "subject-of-somebody-else";
    expect(refusals(await finish(house, await goElsewhere(house)))).toEqual(["SIGN_IN_REFUSED"]);
    provider.signedIn.subject = "subject-of-ann";
    const kept: unknown[] = [];
    for await (const record of house.store.dump()) kept.push(record);
    expect(JSON.stringify(kept)).not.toContain("subject-of-ann");
  });

  it("[C19] is left with code, PKCE, state and nonce, each new", async () => {
    const ways = [await goElsewhere(house), await goElsewhere(house)];
    const asked = ways.map(({ address }) => new URL(address).searchParams);
    for (const name of ["state", "nonce", "code_challenge"]) {
      const values = asked.map((one) => one.get(name) ?? "");
      expect([name, new Set(values).size, values.every((value) => value.length >= 43)]).toEqual([
        ...[name, 2, true],
      ]);
    }
    expect(asked[0]?.get("response_type")).toBe("code");
    expect(asked[0]?.get("code_challenge_method")).toBe("S256");
  });

  it("[C19] is refused with an answer that is used again, mixed up, changed, or came to another browser", async () => {
    const used = await goElsewhere(house);
    expect((await finish(house, used)).status).toBe(200);
    const [one, two] = [await goElsewhere(house), await goElsewhere(house)];
    const other = new URL(one.cameBackTo);
    other.searchParams.set("state", "x".repeat(43));
    const bare = new URL(one.cameBackTo);
    bare.searchParams.delete("state");
    for (const came of [
      used,
      { way: one.way, cameBackTo: two.cameBackTo },
      { way: one.way, cameBackTo: other.href },
      { way: one.way, cameBackTo: bare.href },
      { way: one.way, cameBackTo: `${originOf(house)}/sign-in/elsewhere?error=access_denied` },
      { way: one.way, cameBackTo: "not an address" },
      { way: `${one.way.slice(0, -2)}xx`, cameBackTo: one.cameBackTo },
      { way: "x", cameBackTo: one.cameBackTo },
    ]) {
      const refused = await finish(house, came);
      expect([came, refusals(refused), refused.headers["set-cookie"]]).toEqual([
        ...[came, ["SIGN_IN_REFUSED"], undefined],
      ]);
    }
  });

  it("[C19] links only for who began, and no account twice; unlinked it signs in nobody", async () => {
    const bob = await house.join("reader", "bob");
    const begun = await goElsewhere(house, "link-elsewhere", { before: PASSWORD }, ann);
    expect(refusals(await finish(house, begun, bob))).toEqual(["SIGN_IN_REFUSED"]);
    const own = await goElsewhere(house, "link-elsewhere", { before: PASSWORD }, bob);
    expect(refusals(await finish(house, own, bob))).toEqual(["NAME_TAKEN"]);
    const { linked } = body(await house.act("mine", {}, ann));
    expect(linked).toMatchObject([{ issuer: provider.issuer }]);
    expect(refusals(await house.act("unlink-elsewhere", { id: linked[0].id }, bob))).toEqual([
      "UNKNOWN_SESSION",
    ]);
    await house.act("unlink-elsewhere", { id: linked[0].id }, ann);
    expect(refusals(await finish(house, await goElsewhere(house)))).toEqual(["SIGN_IN_REFUSED"]);
  });

  it("[C19] sends browsers to an address of the house alone", async () => {
    for (const origin of ["https://evil.example", "http://127.0.0.1.evil.example", "null", ""])
      expect(refusals(await house.act("begin-elsewhere", { origin }))).toEqual(["WRONG_FORMAT"]);
  });
});

describe("a provider that forges", () => {
  it("[C20] lets nobody in with what is for another, of another issuer, too old, of another way or key", async () => {
    const forger = await openForgingProvider(CLIENT.client);
    const house = await openHouse({
      ...{ provider: { ...CLIENT, issuer: forger.issuer, name: "Elsewhere" }, secondStepFrom: "owner" },
    });
    try {
      const past = Math.floor(Date.now() / 1000) - 3600;
      const go = async (what: Parameters<typeof forger.forge>[0], cookie?: Cookie) => {
        const [action, input] = cookie ? ["link-elsewhere", { before: PASSWORD }] : ["begin-elsewhere", {}];
        const begun = await house.act(action, { origin: originOf(house), ...input }, { ...cookie });
        const { address, way } = body(begun);
        const { searchParams } = new URL(address);
        forger.forge({ nonce: searchParams.get("nonce") ?? "", ...what });
        const cameBackTo = `${originOf(house)}/sign-in/elsewhere?code=x&state=${searchParams.get("state")}`;
        return finish(house, { way, cameBackTo }, cookie);
      };
      expect(body(await go({}, house.owner))).toEqual({ linked: true });
      expect(await house.who(cookieOf(await go({})))).toMatchObject({ isHeld: true });
      const strong = cookieOf(await go({ claims: { amr: ["pwd", "mfa"] } }));
      expect(await house.who(strong)).not.toHaveProperty("isHeld");
      for (const forged of [
        { claims: { aud: "another-house" } },
        { claims: { aud: ["another-house", "a-third"] } },
        { claims: { iss: "https://issuer.example" } },
        { claims: { exp: past + 60, iat: past } },
        { claims: { nonce: "x".repeat(43) } },
        { claims: { nonce: undefined } },
        { claims: { sub: undefined } },
        { claims: { iat: undefined } },
        { isOtherKey: true },
        { header: { alg: "none" } },
        { header: { kid: "unknown" } },
      ]) {
        const refused = await go(forged);
        expect([forged, refusals(refused)]).toEqual([forged, ["SIGN_IN_REFUSED"]]);
      }
      expect((await go({})).status).toBe(200);
    } finally {
      await house.stop();
      await forger.stop();
    }
  });

  it("[C20] or that cannot be reached is said so, and the house goes on", async () => {
    const house = await openHouse({
      provider: { ...CLIENT, issuer: "http://127.0.0.1:9", name: "Elsewhere" },
    });
    try {
      expect(refusals(await house.act("begin-elsewhere", { origin: originOf(house) }))).toEqual([
        "TRY_LATER",
      ]);
      expect((await house.act("sign-in", { signInName: "ada", password: PASSWORD })).status).toBe(200);
    } finally {
      await house.stop();
    }
  });
});
