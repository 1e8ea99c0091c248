import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Told, ToldSo } from "#server/domain/live/told.ts";
import { toldOf } from "#server/domain/live/told-of.ts";
import { LOCAL_CALLER } from "#server/domain/people/caller.ts";
import type { Written } from "#server/domain/written.ts";
import { openNews } from "#server/live/open-news.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { followNews, MOST_MISSED, type NewsAsk } from "#server/use-cases/live/follow-news.ts";

const hashes = { content: "", previous: "", hash: "" };
type Note = Pick<Written, "revision" | "examination" | "cards" | "deed">;
const anyNote: fc.Arbitrary<Note> = fc.oneof(
  fc.nat({ max: 3 }).map((n): Note => ({ examination: { id: `examination.${n}` as never, version: 1 } })),
  fc.constant<Note>({ revision: 1 }),
  fc.constant<Note>({ cards: [{ kind: "dispute", id: "dispute.x", version: 1, hash: "" }] }),
  fc.constant<Note>({ deed: { by: "person.x", at: "", did: "sign in" } }),
);
const ledgerOf = (notes: readonly Note[]): readonly Written[] =>
  notes.map((note, n) => ({ sequence: n + 1, ...hashes, ...note }));

/** A house whose ledger grows as the test says; reads of the store take their time. */
function openLedger(writes: readonly Written[], begun: number) {
  let known = begun;
  const after = async (from: number, most: number) => {
    await new Promise((resolve) => setImmediate(resolve));
    return writes.slice(from, Math.min(from + most, known));
  };
  const { follow, ...news } = openNews({ writesAfter: after }, begun);
  return {
    news,
    tell: async (until: number) => {
      while (known < until) {
        const written = writes[known++];
        if (written) await follow(written);
      }
    },
  };
}

/** Takes what is told until a write is reached. */
async function take(following: AsyncGenerator<ToldSo>, until: number): Promise<readonly ToldSo[]> {
  const all: ToldSo[] = [];
  for await (const each of following) {
    all.push(each);
    if (each.sequence >= until && !each.hasMore) break;
  }
  return all;
}

const follow = (news: ReturnType<typeof openLedger>["news"], ask: NewsAsk, stop: AbortController) =>
  followNews({ store: openMemoryStore(), news, caller: LOCAL_CALLER }, ask, stop.signal, 0);

describe("[Z5] catching up", () => {
  it("tells each change of the ledger once and in order, wherever one begins and whatever comes meanwhile", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(anyNote, { minLength: 1, maxLength: 40 }),
        fc.nat({ max: 40 }),
        fc.nat({ max: 40 }),
        fc.array(fc.nat({ max: 40 }), { maxLength: 6 }),
        async (notes, from, begins, steps) => {
          // The last write is one that is told, so that the test knows when to end.
          const writes = ledgerOf([...notes, { revision: 2 }]);
          const begun = Math.min(begins, writes.length);
          const since = Math.min(from, begun);
          const { news, tell } = openLedger(writes, begun);
          const stop = new AbortController();
          const taken = take(follow(news, { since }, stop), writes.length);
          for (const step of [...steps].sort((a, b) => a - b)) {
            await tell(Math.min(step, writes.length));
            await new Promise((resolve) => setImmediate(resolve));
          }
          await tell(writes.length);
          const all = await taken;
          expect(all.flatMap(({ told }): readonly Told[] => told)).toEqual(
            writes.slice(since).flatMap(toldOf),
          );
          expect(all.some(({ readAnew }) => readAnew)).toBe(false);
          const numbers = all.map(({ sequence }) => sequence);
          expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
          stop.abort();
        },
      ),
      { numRuns: 300 },
    );
  });

  it("goes on without a gap for who was told up to any point, and comes again from there", async () => {
    const writes = ledgerOf(Array.from({ length: 1500 }, (_, n): Note => ({ revision: n + 1 })));
    const { news } = openLedger(writes, writes.length);
    const numbers: number[] = [];
    let since = 0;
    while (since < writes.length) {
      const stop = new AbortController();
      for await (const { told, sequence } of follow(news, { since }, stop)) {
        numbers.push(...told.map((each) => each.sequence));
        since = sequence;
        break;
      }
    }
    expect(numbers).toEqual(writes.map(({ sequence }) => sequence));
  });

  it("says to read anew where more was missed than is told, and tells what comes then", async () => {
    const writes = ledgerOf(Array.from({ length: MOST_MISSED + 2 }, (): Note => ({ revision: 1 })));
    const { news, tell } = openLedger(writes, MOST_MISSED + 1);
    const stop = new AbortController();
    const following = follow(news, { since: 0 }, stop);
    const first = await following.next();
    expect(first.value).toEqual({ sequence: MOST_MISSED + 1, told: [], hasMore: false, readAnew: true });
    const second = following.next();
    await tell(MOST_MISSED + 2);
    expect((await second).value).toMatchObject({ readAnew: false, told: [{ sequence: MOST_MISSED + 2 }] });
    const least = follow(news, { since: 2 }, stop);
    expect((await least.next()).value).toMatchObject({ readAnew: false, hasMore: true });
    stop.abort();
  });

  it("says to read anew after the store was restored without its ledger", async () => {
    const restored: Written = { sequence: 1, ...hashes, revision: 5, restored: true };
    const { news, tell } = openLedger([restored], 0);
    const stop = new AbortController();
    const following = follow(news, {}, stop);
    expect((await following.next()).value).toMatchObject({ sequence: 0, readAnew: false });
    const second = following.next();
    await tell(1);
    expect((await second).value).toMatchObject({ sequence: 1, readAnew: true });
    stop.abort();
  });

  it("ends at once when nobody takes it any more, though nothing happens", async () => {
    const { news } = openLedger([], 0);
    const stop = new AbortController();
    const following = follow(news, {}, stop);
    await following.next();
    const next = following.next();
    stop.abort();
    expect(await next).toEqual({ done: true, value: undefined });
  });
});
