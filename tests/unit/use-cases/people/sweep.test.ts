import { beforeEach, describe, expect, it } from "vitest";
import { findCaller } from "#server/use-cases/people/find-caller.ts";
import { invite } from "#server/use-cases/people/invite.ts";
import { makeToken } from "#server/use-cases/people/make-token.ts";
import { openSweep, SWEPT_AT_ONCE } from "#server/use-cases/people/open-sweep.ts";
import { changePassword } from "#server/use-cases/people/own-account.ts";
import { signIn } from "#server/use-cases/people/sign-in.ts";
import { DESK_PASSWORD, got, openDesk } from "#tests/support/open-desk.ts";

const DAY = 24 * 3_600_000;
let desk: ReturnType<typeof openDesk>;
let first: string;
beforeEach(async () => {
  desk = openDesk();
  ({ secret: first } = await desk.begin());
});
const count = async (kind: string) => (await desk.store.listCards({ kind }, { first: 1 })).total;
const enter = async (password = DESK_PASSWORD) =>
  got(await signIn(desk.ports, { signInName: "ada", password })).secret;

describe("[C29] what has ended", () => {
  it("is taken away a week after its time, not before, and what still holds stays", async () => {
    const self = await desk.as(first);
    got(await makeToken(self, { label: "short", role: "reader", days: 1 }));
    const { secret: token } = got(await makeToken(self, { label: "long", role: "reader", days: 20 }));
    got(await invite(self, "reader"));
    await signIn(desk.ports, { signInName: "ada", password: "wrong" });
    const sweep = openSweep(desk.ports);
    const kept = async () => Promise.all(["session", "token", "invitation", "sign-in-trouble"].map(count));
    const then = async (days: number) => {
      desk.clock.time += days * DAY;
      return [await sweep(), ...(await kept())];
    };
    expect(await then(0)).toEqual([0, 1, 2, 1, 1]);
    expect(await then(1 / 24)).toEqual([1, 1, 2, 1, 0]);
    // The session was over after 8 hours, the short token after a day.
    expect(await then(7.2)).toEqual([0, 1, 2, 1, 0]);
    expect(await then(0.2)).toEqual([1, 0, 2, 1, 0]);
    expect(await then(0.6)).toEqual([1, 0, 1, 1, 0]);
    const late = await enter();
    expect(await then(6)).toEqual([1, 1, 1, 0, 0]);
    expect(await findCaller(desk.ports, { token })).toBeDefined();
    expect(late).toBeDefined();
    expect((await desk.store.verify()) as object).toHaveProperty("head");
  });

  it("is taken away at once where it was ended by a new password, and the new one goes on", async () => {
    for (let n = 0; n < 4; n++) await enter();
    got(
      await changePassword(await desk.as(first), {
        before: DESK_PASSWORD,
        password: "five boards, two saws",
      }),
    );
    const fresh = await enter("five boards, two saws");
    expect(await openSweep(desk.ports)()).toBe(5);
    expect(await count("session")).toBe(1);
    expect(await findCaller(desk.ports, { session: fresh })).toBeDefined();
  });

  it("is looked at in pages, each once a round, and taken away to the last by two who do it at once", async () => {
    const many = 2 * SWEPT_AT_ONCE + 50;
    for (let n = 0; n < many; n++) await enter();
    desk.clock.time += 8 * DAY;
    const fresh = await enter();
    const [one, two] = [openSweep(desk.ports), openSweep(desk.ports)];
    const turn = async () => Promise.all([one(), two()]);
    expect(await one()).toBeLessThanOrEqual(SWEPT_AT_ONCE);
    let swept = 0;
    for (let n = 0; n < 6; n++) swept += (await turn()).reduce((sum, each) => sum + each, 0);
    expect(swept).toBeGreaterThan(0);
    expect(await count("session")).toBe(1);
    expect(await findCaller(desk.ports, { session: fresh })).toBeDefined();
    const before = await desk.store.newestWrite();
    await turn();
    expect(await desk.store.newestWrite()).toBe(before);
  });
});
