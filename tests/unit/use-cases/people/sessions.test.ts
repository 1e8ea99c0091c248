import { beforeEach, describe, expect, it } from "vitest";
import { acceptInvitation } from "#server/use-cases/people/accept-invitation.ts";
import { findCaller } from "#server/use-cases/people/find-caller.ts";
import { inviteFirstOwner } from "#server/use-cases/people/invite.ts";
import { makeToken } from "#server/use-cases/people/make-token.ts";
import { signIn } from "#server/use-cases/people/sign-in.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { got, openDesk, DESK_PASSWORD as PASSWORD } from "#tests/support/open-desk.ts";
import { watchStore } from "#tests/support/watch-store.ts";

const HOUR = 3_600_000;

let desk: ReturnType<typeof openDesk>;
let session: string;
let person: string;
beforeEach(async () => {
  desk = openDesk();
  ({ secret: session, person } = await desk.begin());
});
const caller = async (shown = session) => (await findCaller(desk.ports, { session: shown }))?.caller.id;

describe("a session", () => {
  it("[C6] is over after 8 hours without a request", async () => {
    desk.clock.time += 8 * HOUR - 1;
    expect(await caller()).toBe(person);
    desk.clock.time += 8 * HOUR;
    expect(await caller()).toBeUndefined();
  });

  it("[C6] is over after 7 days, however often it is used", async () => {
    for (let hours = 0; hours < 7 * 24 - 1; hours++) {
      desk.clock.time += HOUR;
      expect(await caller()).toBe(person);
    }
    desk.clock.time += HOUR;
    expect(await caller()).toBeUndefined();
  });

  it("[C6] is noted every 5 minutes, not with each request", async () => {
    const before = await desk.ports.store.newestWrite();
    for (let seconds = 0; seconds < 600; seconds += 10) {
      desk.clock.time += 10_000;
      await caller();
    }
    expect((await desk.ports.store.newestWrite()) - before).toBe(2);
  });
});

describe("signing in", () => {
  it("[C8] does the same work for a name that there is not", async () => {
    await signIn(desk.ports, { signInName: "nobody", password: "x" });
    await signIn(desk.ports, { signInName: "<bad>", password: "x" });
    await signIn(desk.ports, { signInName: "ada", password: "x" });
    expect(desk.asked).toEqual(["nobody", "nobody", `new:${PASSWORD}`]);
  });

  it("[C8] looks at many tries at once one after the other, so that they are no more than those", async () => {
    const many = (typed: object) =>
      Promise.all(
        Array.from({ length: 12 }, () =>
          signIn(desk.ports, { signInName: "ada", password: "x", ...typed }).then((answer) =>
            isRefusal(answer) ? answer.refused[0].code : "IN",
          ),
        ),
      );
    const [wrong, late] = [Array(5).fill("SIGN_IN_REFUSED"), Array(7).fill("TRY_LATER")];
    expect(await many({})).toEqual([...wrong, ...late]);
    expect((await desk.ports.store.card("sign-in-trouble", person))?.body).toMatchObject({ failures: 5 });
    expect(await many({ password: PASSWORD })).toEqual(Array(12).fill("TRY_LATER"));
    desk.clock.time += 2 * HOUR;
    expect(await many({ signInName: "nobody" })).toEqual([...wrong, ...late]);
  });

  it("[C8] tells by nothing whether there is a name: not by waiting, by what is read, nor by when it answers", async () => {
    const told = async (signInName: string) => {
      const calls: string[] = [];
      let settled = 0;
      const ports = {
        ...desk.ports,
        store: watchStore(desk.ports.store, (call) => calls.push(call)),
        tries: {
          ...desk.ports.tries,
          isToBeNoted: () => false,
          settle: async () => {
            await new Promise((resolve) => setTimeout(resolve, 20));
            settled++;
          },
        },
      };
      const codes: string[] = [];
      for (let n = 0; n < 8; n++) {
        const answer = await signIn(ports, { signInName, password: "x" });
        codes.push(`${isRefusal(answer) ? JSON.stringify(answer.refused) : "IN"} ${settled}`);
        desk.clock.time += n === 6 ? 1000 : 0;
      }
      // What a failure writes is written while it settles.
      return {
        codes,
        calls: calls.filter((call) => call === "card").length - (signInName === "ada" ? 6 : 0),
      };
    };
    const [known, unknown] = [await told("ada"), await told("nobody")];
    expect(unknown).toEqual(known);
    expect(known.codes.map((code) => /[A-Z_]{6,}/.exec(code)?.[0])).toEqual([
      ...[...Array(5).fill("SIGN_IN_REFUSED"), "TRY_LATER", "TRY_LATER", "SIGN_IN_REFUSED"],
    ]);
  });

  it("[C11] hashes anew what was hashed by less", async () => {
    const { store } = desk.ports;
    const next = { keys: {}, body: { phc: `old:${PASSWORD}` } };
    const cards = [{ kind: "password", id: person, expectedVersion: 1, next }];
    await store.writeCards({ cards, deed: { by: "test", at: desk.ports.now(), did: "age" } });
    got(await signIn(desk.ports, { signInName: "ada", password: PASSWORD }));
    expect((await store.card("password", person))?.body).toEqual({ phc: `new:${PASSWORD}` });
  });
});

describe("what does not hold for ever", () => {
  it("[C7] a token ends on its day", async () => {
    const acting = await desk.as(session);
    const { secret: token } = got(await makeToken(acting, { label: "scan", role: "reader", days: 2 }));
    desk.clock.time += 48 * HOUR - 1;
    expect((await findCaller(desk.ports, { token }))?.caller).toEqual({
      id: person,
      role: "reader",
      via: "token",
    });
    desk.clock.time += 1;
    expect(await findCaller(desk.ports, { token })).toBeUndefined();
  });

  it("[C3] the first owner's secret, after a day; of two processes the first that is used counts", async () => {
    const fresh = openDesk();
    const [one, two] = [got(await inviteFirstOwner(fresh.ports)), got(await inviteFirstOwner(fresh.ports))];
    const take = (secret: string) =>
      acceptInvitation(fresh.ports, { secret, signInName: "ada", name: "Ada", password: PASSWORD });
    fresh.clock.time += 24 * HOUR;
    expect(await take(one.secret)).toMatchObject({ refused: [{ code: "LINK_USED_UP" }] });
    fresh.clock.time -= 1;
    got(await take(two.secret));
    expect(await take(one.secret)).toMatchObject({ refused: [{ code: "LINK_USED_UP" }] });
    expect(await inviteFirstOwner(fresh.ports)).toBeUndefined();
  });
});
