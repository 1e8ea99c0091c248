import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { keepResults } from "#server/again/keep-results.ts";
import { answerChronicle } from "#server/api/chronicle/answer-chronicle.ts";
import type { ChroniclePorts } from "#server/api/chronicle/chronicle-actions.ts";
import type { Change } from "#server/domain/change.ts";
import { type Caller, LOCAL_CALLER } from "#server/domain/people/caller.ts";
import type { Store } from "#server/ports/store.ts";
import { openSeals } from "#server/proof/open-seals.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit } from "./build-change.ts";
import { answered } from "./expect-answer.ts";
import { NOTHING_STANDS } from "./nothing-stands.ts";

/** The chronicle without HTTP, over a store that holds the changes, one revision each, an hour apart; `close` takes its key away. */
export async function openChronicle(changes: readonly Change[], store: Store = openMemoryStore()) {
  let count = 0;
  for (const change of changes)
    answered(
      await store.commit(aCommit(change, { by: "test", at: at(count++), message: `change ${count}` })),
    );
  const folder = mkdtempSync(join(tmpdir(), "scribeline-chronicle-"));
  const now = () => at(count++);
  const seals = openSeals(folder, now);
  const results = keepResults();
  const as = (caller: Caller | undefined): ChroniclePorts => ({
    ...{ store, now, seals, results, standings: NOTHING_STANDS, caller },
    newSuffix: () => `s${String(count++).padStart(7, "0")}`,
  });
  return {
    store,
    as,
    /** What an action answers; its type is the test's to know. */
    ask: async (
      action: string,
      input: object = {},
      caller: Caller | undefined = LOCAL_CALLER,
      // biome-ignore lint/suspicious/noExplicitAny: see above
    ): Promise<any> => {
      const answer = await answerChronicle(as(caller), action, JSON.parse(JSON.stringify(input)));
      return answer && JSON.parse(JSON.stringify(answer.body));
    },
    close: () => rmSync(folder, { recursive: true, force: true }),
  };
}

const at = (hour: number): string => new Date(Date.UTC(2026, 0, 1, hour)).toISOString();
