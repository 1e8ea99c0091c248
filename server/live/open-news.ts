import type { Written } from "../domain/written.ts";
import type { News } from "../ports/news.ts";
import { orStopped } from "../ports/or-stopped.ts";
import type { Store } from "../ports/store.ts";

/** Writes that are kept in memory, for those who are not far behind. */
const KEPT = 1000;

/** News of a store, told from what follows its writes (`follow`); `begun` is the number up to which everything is known already. */
export function openNews(
  store: Pick<Store, "writesAfter">,
  begun: number,
): News & { readonly follow: (written: Written) => Promise<void> } {
  /** The newest writes, without a gap, the last of which is `sequence`. */
  let kept: Written[] = [];
  let sequence = begun;
  let told = Promise.withResolvers<void>();
  return {
    sequence: () => sequence,
    follow: async (written) => {
      kept.push(written);
      if (kept.length > 2 * KEPT) kept = kept.slice(-KEPT);
      sequence = written.sequence;
      const { resolve } = told;
      told = Promise.withResolvers();
      resolve();
    },
    after: async (from, most) => {
      const first = kept[0]?.sequence ?? sequence + 1;
      if (from + 1 >= first) return kept.slice(from + 1 - first, from + 1 - first + most);
      const writes = await store.writesAfter(from, most);
      // What this process was not told of yet is no news: whoever hears of it would not find it here.
      return writes.filter((written) => written.sequence <= sequence);
    },
    beyond: async (from, stop) => {
      if (sequence <= from) await orStopped(told.promise, stop);
    },
  };
}
