import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import type { Written } from "#server/domain/written.ts";
import { type Follower, followWrites, type Listener } from "#server/follower/follow-writes.ts";
import type { Log } from "#server/ports/log.ts";
import type { Store } from "#server/ports/store.ts";

const stops: Follower[] = [];
afterEach(async () => {
  for (const follower of stops.splice(0)) await follower.stop();
});

const aWrite = (sequence: number): Written => ({ sequence, content: "", previous: "", hash: "" });

/** Writes as a store keeps them; `fail` makes the next reads fail. */
function someWrites(count = 0) {
  const kept: Written[] = [];
  let fails = 0;
  const write = (): Written => {
    const written = { ...aWrite(kept.length + 1), revision: kept.length + 1 };
    kept.push(written);
    return written;
  };
  for (let n = 0; n < count; n++) write();
  const store: Pick<Store, "writesAfter"> = {
    writesAfter: async (after, first) => {
      await Promise.resolve();
      if (fails-- > 0) throw new Error("the store is away");
      return kept.slice(after, after + first);
    },
  };
  return {
    store,
    write,
    kept,
    fail: (times: number) => {
      fails = times;
    },
  };
}

function follow(
  store: Pick<Store, "writesAfter">,
  listeners: readonly Listener[],
  { after = 0, every = 1 } = {},
) {
  const logged: Parameters<Log>[0][] = [];
  const follower = followWrites(store, listeners, { after, every, log: (line) => logged.push(line) });
  stops.push(follower);
  return { follower, logged };
}

/** A listener that remembers what it took, and throws where `fails` says so, by the number of its call. */
function listener(fails: (call: number) => boolean = () => false) {
  const took: number[] = [];
  let calls = 0;
  const listen: Listener = async ({ sequence }) => {
    await Promise.resolve();
    if (fails(calls++)) throw new Error("not now");
    took.push(sequence);
  };
  return { took, listen };
}
const upTo = (last: number, after = 0): number[] =>
  Array.from({ length: last - after }, (_, n) => after + n + 1);

describe("[S48] following the writes of a store", () => {
  it("hands on every write in order, those that were there and those that come", async () => {
    const { store, write } = someWrites(450);
    const { took, listen } = listener();
    const { follower } = follow(store, [listen]);
    expect(await follower.reach(450, 2000)).toBe(true);
    write();
    write();
    expect(await follower.reach(452, 2000)).toBe(true);
    expect(took).toEqual(upTo(452));
    expect(follower.sequence).toBe(452);
  });

  it("begins after what is known already", async () => {
    const { store } = someWrites(5);
    const { took, listen } = listener();
    const { follower } = follow(store, [listen], { after: 3 });
    expect(await follower.reach(3, 0)).toBe(true);
    expect(await follower.reach(5, 2000)).toBe(true);
    expect(took).toEqual([4, 5]);
  });

  it("tells the listeners of one write in turn, and of the next only then", async () => {
    const { store } = someWrites(3);
    const order: string[] = [];
    const slow = (name: string, ms: number): Listener => {
      return async ({ sequence }) => {
        await new Promise((resolve) => setTimeout(resolve, ms));
        order.push(`${name}${sequence}`);
      };
    };
    const { follower } = follow(store, [slow("a", 8), slow("b", 1)]);
    expect(await follower.reach(3, 2000)).toBe(true);
    expect(order).toEqual(["a1", "b1", "a2", "b2", "a3", "b3"]);
  });

  it("looks for writes of others by itself, and at once when it is nudged", async () => {
    const { store, write } = someWrites();
    const { took, listen } = listener();
    const { follower } = follow(store, [listen], { every: 5 });
    write();
    await expect.poll(() => took).toEqual([1]);
    await follower.stop();

    const slow = follow(store, [listen], { after: 1, every: 1_000_000 });
    await new Promise((resolve) => setTimeout(resolve, 20));
    write();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(took).toEqual([1]);
    slow.follower.nudge();
    await expect.poll(() => took).toEqual([1, 2]);
  });

  it("loses no nudge that comes while it looks", async () => {
    const { store, write } = someWrites(1);
    let follower: Follower | undefined;
    const took: number[] = [];
    const listen: Listener = async ({ sequence }) => {
      took.push(sequence);
      if (sequence >= 3) return;
      write();
      follower?.nudge();
    };
    ({ follower } = follow(store, [listen], { every: 1_000_000 }));
    expect(await follower.reach(3, 2000)).toBe(true);
    expect(took).toEqual([1, 2, 3]);
  });

  it("tries a write again with the listener that threw, not with those before it, and logs it", async () => {
    const { store } = someWrites(3);
    const [first, second] = [listener(), listener((call) => call === 1 || call === 2)];
    const { follower, logged } = follow(store, [first.listen, second.listen]);
    expect(await follower.reach(3, 2000)).toBe(true);
    expect(first.took).toEqual([1, 2, 3]);
    expect(second.took).toEqual([1, 2, 3]);
    expect(logged).toEqual([
      expect.objectContaining({ level: "error", event: "write not handed on", after: 1, tries: 1 }),
      expect.objectContaining({ after: 1, tries: 2, error: expect.stringContaining("not now") }),
    ]);
  });

  it("hands nothing on past a gap, and goes on once it is closed", async () => {
    const kept = upTo(4).map(aWrite);
    const seen = new Set([1, 3, 4]);
    const store = {
      writesAfter: async (after: number) => kept.filter(({ sequence: n }) => n > after && seen.has(n)),
    };
    const { took, listen } = listener();
    const { follower } = follow(store, [listen]);
    expect(await follower.reach(2, 30)).toBe(false);
    expect(took).toEqual([1]);
    seen.add(2);
    expect(await follower.reach(4, 2000)).toBe(true);
    expect(took).toEqual([1, 2, 3, 4]);
  });

  it("goes on by itself when the store answers again", async () => {
    const { store, fail } = someWrites(2);
    fail(3);
    const { took, listen } = listener();
    const { follower, logged } = follow(store, [listen]);
    expect(await follower.reach(2, 2000)).toBe(true);
    expect(took).toEqual([1, 2]);
    expect(logged.map(({ tries }) => tries)).toEqual([1, 2, 3]);
  });

  it("says that a write was not reached when patience ends, or when it is stopped", async () => {
    const { store } = someWrites(1);
    const { follower } = follow(store, []);
    expect(await follower.reach(2, 10)).toBe(false);
    const waits = follower.reach(2, 100_000);
    await follower.stop();
    expect(await waits).toBe(false);
    expect(await follower.reach(2, 100_000)).toBe(false);
    expect(await follower.reach(1, 0)).toBe(true);
  });

  it("stops only after the write that is under way, which all listeners are told of", async () => {
    const { store } = someWrites(3);
    let begun: () => void = () => {};
    const hasBegun = new Promise<void>((resolve) => {
      begun = resolve;
    });
    const [slowly, second] = [listener(), listener()];
    const { follower } = follow(store, [
      async (written) => {
        begun();
        await new Promise((resolve) => setTimeout(resolve, 20));
        await slowly.listen(written);
      },
      second.listen,
    ]);
    await hasBegun;
    await follower.stop();
    expect([slowly.took, second.took]).toEqual([[1], [1]]);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect([slowly.took, second.took]).toEqual([[1], [1]]);
  });

  it("leaves out nothing and doubles nothing, whatever fails and however writes come", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.nat(5), { maxLength: 6 }),
        fc.array(fc.array(fc.boolean(), { maxLength: 4 }), { minLength: 1, maxLength: 2 }),
        fc.nat(3),
        async (bursts, failing, away) => {
          const { store, write, kept, fail } = someWrites();
          const all = failing.map((fails) => listener((call) => fails[call] === true));
          const { follower } = follow(
            store,
            all.map(({ listen }) => listen),
            { every: 0.01 },
          );
          for (const burst of bursts) {
            for (let n = 0; n < burst; n++) write();
            fail(away);
            if (burst % 2 === 0) follower.nudge();
            await new Promise((resolve) => setTimeout(resolve, burst % 3));
          }
          expect(await follower.reach(kept.length, 5000)).toBe(true);
          await follower.stop();
          for (const { took } of all) expect(took).toEqual(upTo(kept.length));
        },
      ),
      { numRuns: 40 },
    );
  });
});
