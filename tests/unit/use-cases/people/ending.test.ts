import { beforeEach, describe, expect, it } from "vitest";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { acceptInvitation } from "#server/use-cases/people/accept-invitation.ts";
import { beginAnew, erasePerson, takeNewPassword } from "#server/use-cases/people/begin-anew.ts";
import { beginFactor, finishFactor, removeFactor } from "#server/use-cases/people/change-factor.ts";
import { changePerson } from "#server/use-cases/people/change-person.ts";
import { beginElsewhere, finishElsewhere } from "#server/use-cases/people/elsewhere.ts";
import { findCaller } from "#server/use-cases/people/find-caller.ts";
import { invite } from "#server/use-cases/people/invite.ts";
import { makeToken } from "#server/use-cases/people/make-token.ts";
import { changePassword, endOwn } from "#server/use-cases/people/own-account.ts";
import {
  beginPasskey,
  beginPasskeySignIn,
  finishPasskey,
  finishPasskeySignIn,
} from "#server/use-cases/people/passkeys.ts";
import { signIn } from "#server/use-cases/people/sign-in.ts";
import { openDevice } from "#tests/support/device.ts";
import { DESK_PASSWORD, got, openDesk } from "#tests/support/open-desk.ts";

const NEW = "five oak boards, two saws";
const ORIGIN = "http://localhost";
const ASKED = { label: "scan", role: "reader", days: 9 } as const;
const refused = (code: string) => ({ refused: [{ code }] });

let desk: ReturnType<typeof openDesk>;
let ben: { readonly person: string; readonly secret: string };
let owner: Awaited<ReturnType<typeof desk.as>>;
beforeEach(async () => {
  desk = openDesk();
  owner = await desk.as((await desk.begin()).secret);
  const { secret } = got(await invite(owner, "contributor"));
  const accepted = { secret, signInName: "ben", name: "Ben", password: DESK_PASSWORD };
  ben = got(await acceptInvitation(desk.ports, accepted));
});

const isIn = async (session: string) => (await findCaller(desk.ports, { session })) !== undefined;
const sessions = async () => {
  const key = { name: "person", value: ben.person };
  const { rows } = await desk.store.listCards({ kind: "session", key }, { first: 200 });
  return rows.map(({ id }) => id);
};
/** Whether any session of Ben's that is kept lets anybody in. */
const anyIsIn = async () => {
  const found = await Promise.all((await sessions()).map((id) => isIn(id.replace("hash-of-", ""))));
  return found.includes(true);
};
const change = async () =>
  changePassword(await desk.as(ben.secret), { before: DESK_PASSWORD, password: NEW });
const tryToSignIn = (password = DESK_PASSWORD) => signIn(desk.ports, { signInName: "ben", password });
const versionOf = async (person: string) => (await desk.store.card("person", person))?.version ?? 0;

const OTHER = { issuer: "https://elsewhere", subject: "s", isStrong: false };
const provider = {
  name: "Elsewhere",
  begin: async () => "https://elsewhere/begin",
  finish: async () => OTHER,
};
const passkeys = {
  askToMake: async () => ({}),
  askToSign: async () => ({}),
  checkMade: async () => ({ key: "key", publicKey: "public", counter: 0 }),
  keyOf: () => "key",
  checkSigned: async () => 0,
};
const confirming = { before: DESK_PASSWORD };

describe("[C27] a way in that was begun before all was ended", () => {
  const ends = {
    "a new password": change,
    "an account begun anew": async () => beginAnew(owner, ben.person),
    "a person shut out": async () =>
      changePerson(owner, ben.person, await versionOf(ben.person), { state: "shut out" }),
    "a device that was added": async () => {
      const self = await desk.as(ben.secret);
      const { secret } = got(await beginFactor(self, { before: DESK_PASSWORD }));
      return finishFactor(self, openDevice(secret).code(0, desk.clock.time));
    },
  };
  it.each(Object.entries(ends))(
    "by password is refused after %s, and lets nobody in later",
    async (what, end) => {
      desk.meanwhile.comparing = async () => got(await end());
      const code = what === "a device that was added" ? "SECOND_STEP_NEEDED" : "SIGN_IN_REFUSED";
      expect(await tryToSignIn()).toMatchObject(refused(code));
      got(await changePerson(owner, ben.person, await versionOf(ben.person), { state: "active" }));
      for (const id of await sessions())
        if (id !== `hash-of-${ben.secret}`) expect(await isIn(id.replace("hash-of-", ""))).toBe(false);
    },
  );

  it("at another provider is refused after a new password, and one that begins then is not", async () => {
    const ports = { ...desk.ports, provider };
    const self = { ...(await desk.as(ben.secret)), provider };
    const came = (way: string) => ({ way, cameBackTo: ORIGIN });
    const linking = got(await beginElsewhere(self, ORIGIN, confirming));
    got(await finishElsewhere(self, came(linking.way)));
    desk.clock.time += 1000;
    const { way } = got(await beginElsewhere(ports, ORIGIN));
    desk.clock.time += 1000;
    got(await change());
    expect(await finishElsewhere(ports, came(way))).toMatchObject(refused("SIGN_IN_REFUSED"));
    desk.clock.time += 1000;
    const { way: later } = got(await beginElsewhere(ports, ORIGIN));
    expect(got(await finishElsewhere(ports, came(later)))).toHaveProperty("secret");
  });

  it("by a passkey is refused after a new password, and one that begins then is not", async () => {
    const self = { ...(await desk.as(ben.secret)), passkeys };
    const ports = { ...desk.ports, passkeys };
    const made = got(await beginPasskey(self, ORIGIN, confirming));
    got(await finishPasskey(self, { way: made.way, response: "{}", label: "key" }));
    desk.clock.time += 1000;
    const { way } = got(await beginPasskeySignIn(ports, ORIGIN));
    desk.clock.time += 1000;
    got(await change());
    expect(await finishPasskeySignIn(ports, { way, response: "{}" })).toMatchObject(
      refused("SIGN_IN_REFUSED"),
    );
    desk.clock.time += 1000;
    const { way: later } = got(await beginPasskeySignIn(ports, ORIGIN));
    got(await finishPasskeySignIn(ports, { way: later, response: "{}" }));
  });

  it("which its session was to make (token, passkey, device, link, password) is not kept any more", async () => {
    const self = { ...(await desk.as(ben.secret)), passkeys, provider };
    const key = got(await beginPasskey(self, ORIGIN, confirming));
    const link = got(await beginElsewhere(self, ORIGIN, confirming));
    const { secret } = got(await beginFactor(self, confirming));
    desk.meanwhile.comparing = async () => got(await change());
    const late = changePassword(self, { ...confirming, password: "six oak boards, no saw" });
    expect(await late).toMatchObject(refused("NOT_SIGNED_IN"));
    const code = openDevice(secret).code(0, desk.clock.time);
    for (const made of [
      await makeToken(self, ASKED),
      await finishPasskey(self, { way: key.way, response: "{}", label: "key" }),
      await finishElsewhere(self, { way: link.way, cameBackTo: ORIGIN }),
      await finishFactor(self, code),
      await beginFactor(self, { before: NEW }),
    ])
      expect(made).toMatchObject(refused("NOT_SIGNED_IN"));
    for (const kind of ["token", "passkey", "identity"])
      expect([kind, (await desk.store.listCards({ kind }, { first: 9 })).total]).toEqual([kind, 0]);
    got(await tryToSignIn(NEW));
  });

  it("with two who change one password at once from the same old one, one does", async () => {
    const elsewhere = got(await tryToSignIn());
    const [one, two] = [await desk.as(ben.secret), await desk.as(elsewhere.secret)];
    desk.meanwhile.comparing = async () => got(await changePassword(two, { ...confirming, password: NEW }));
    expect(await changePassword(one, { ...confirming, password: "six oak boards, no saw" })).toMatchObject(
      refused("NOT_SIGNED_IN"),
    );
    got(await tryToSignIn(NEW));
  });

  it("leaves nothing that lets in where an account is begun anew, however much is made meanwhile", async () => {
    const self = await desk.as(ben.secret);
    const { store } = desk;
    let again = 0;
    // Just before it is written, Ben makes a token, so that what was listed is not all any more.
    const busy = new Proxy(store, {
      get: (target, name) =>
        name === "writeCards"
          ? async (along: Parameters<typeof store.writeCards>[0]) => {
              if (along.deed.did === "begin account anew" && again++ < 3) got(await makeToken(self, ASKED));
              return target.writeCards(along);
            }
          : Reflect.get(target, name, target),
    });
    const { secret } = got(await beginAnew({ ...owner, store: busy }, ben.person));
    expect(again).toBe(4);
    expect((await store.listCards({ kind: "token" }, { first: 9 })).total).toBe(0);
    expect(await anyIsIn()).toBe(false);
    const back = got(await takeNewPassword(desk.ports, { secret, password: NEW }));
    expect(await isIn(back.secret)).toBe(true);
  });
});

describe("ending sessions", () => {
  it("[C28] gets through however often one of them is used meanwhile", async () => {
    const self = await desk.as(ben.secret);
    const { store } = desk;
    let again = 0;
    const used = new Proxy(store, {
      get: (target, name) =>
        name === "writeCards"
          ? async (along: Parameters<typeof store.writeCards>[0]) => {
              if (again++ < 5) {
                desk.clock.time += 300_000;
                await findCaller({ ...desk.ports, store: target }, { session: ben.secret });
              }
              return target.writeCards(along);
            }
          : Reflect.get(target, name, target),
    });
    const ports = { ...self, store: used };
    const { secret } = got(await beginFactor(ports, confirming));
    const device = openDevice(secret);
    const { codes } = got(await finishFactor(ports, device.code(0, desk.clock.time)));
    again = 0;
    got(await removeFactor(ports, { ...confirming, code: codes[0] ?? "" }));
    expect(await isIn(ben.secret)).toBe(true);
    again = 0;
    expect(await endOwn(ports, "session", ports.here)).toEqual({ ended: true });
    expect(await anyIsIn()).toBe(false);
  });

  it("[C28] says so after some tries where it is changed without a pause", async () => {
    const self = await desk.as(ben.secret);
    let tries = 0;
    const never = new Proxy(openMemoryStore(), {
      get: (_, name) =>
        name === "writeCards"
          ? async () => {
              tries++;
              return {
                problem: true,
                code: "CHANGED_MEANWHILE",
                message: "",
                path: ["cards", "session", "x"],
              };
            }
          : Reflect.get(desk.store, name, desk.store),
    });
    expect(await endOwn({ ...self, store: never }, "session", self.here)).toMatchObject(
      refused("CHANGED_MEANWHILE"),
    );
    expect(tries).toBeLessThan(100);
  });

  it("[C22] takes an erased person's ways in with it that are made at the same time", async () => {
    const self = await desk.as(ben.secret);
    desk.meanwhile.comparing = async () =>
      got(await erasePerson(owner, ben.person, await versionOf(ben.person)));
    expect(await tryToSignIn()).toMatchObject(refused("SIGN_IN_REFUSED"));
    expect(await makeToken(self, ASKED)).toMatchObject(refused("NOT_SIGNED_IN"));
    expect(await anyIsIn()).toBe(false);
  });
});

describe("codes", () => {
  it("[C13] that are tried many at once are looked at one after the other: five, and then one waits", async () => {
    const self = await desk.as(ben.secret);
    const { secret } = got(await beginFactor(self, confirming));
    const looked: string[] = [];
    const { secrets } = desk.ports;
    const ports = {
      ...self,
      secrets: {
        ...secrets,
        findStep: (...asked: Parameters<typeof secrets.findStep>) => {
          looked.push(asked[1]);
          return secrets.findStep(...asked);
        },
      },
    };
    const guesses = Array.from({ length: 21 }, (_, n) => `00000${n}`);
    await Promise.all(guesses.map((guess) => finishFactor(ports, guess)));
    expect(looked).toHaveLength(5);
    desk.clock.time += 60_000;
    got(await finishFactor(ports, openDevice(secret).code(0, desk.clock.time)));
    looked.length = 0;
    desk.clock.time += 3_600_000;
    const typed = { signInName: "ben", password: DESK_PASSWORD };
    await Promise.all(guesses.map((code) => signIn(ports, { ...typed, code })));
    expect(looked).toHaveLength(5);
    looked.length = 0;
    desk.clock.time += 3_600_000;
    await Promise.all(guesses.map((code) => beginFactor(ports, { ...confirming, code })));
    expect(looked).toHaveLength(5);
  });
});

describe("the first code of a device", () => {
  it("[C13] makes whoever guesses it wait, counts with the guesses of passwords, and the audit tells it", async () => {
    const self = await desk.as(ben.secret);
    const { secret } = got(await beginFactor(self, confirming));
    const code = () => openDevice(secret).code(0, desk.clock.time);
    for (let guess = 0; guess < 5; guess++)
      expect(await finishFactor(self, "000000")).toMatchObject(refused("SIGN_IN_REFUSED"));
    for (const made of [
      await finishFactor(self, code()),
      await tryToSignIn(),
      await beginFactor(self, confirming),
    ])
      expect(made).toMatchObject(refused("TRY_LATER"));
    const noted = (await desk.store.writesAfter(0, 99)).map(({ deed }) => deed?.did);
    expect(noted.filter((did) => did === "refuse first code of a device")).toHaveLength(5);
    desk.clock.time += 60_000;
    got(await finishFactor(self, code()));
  });
});
