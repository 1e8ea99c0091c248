import { keepResults } from "#server/again/keep-results.ts";
import { createContext } from "#server/api/context.ts";
import { createApollo } from "#server/api/create-apollo.ts";
import { buildSchema } from "#server/api/schema.ts";

import type { Change } from "#server/domain/change.ts";
import { type Caller, LOCAL_CALLER } from "#server/domain/people/caller.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { ReferenceRow } from "#server/domain/reference-row.ts";
import { openLive } from "#server/open-live.ts";
import type { Log } from "#server/ports/log.ts";
import { tablesOf } from "#server/ports/reference-tables.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openSurveys } from "#server/use-cases/ask/surveys/open-surveys.ts";
import { weighHere } from "#server/weigher/weigh-here.ts";
import { NOTHING_STANDS } from "./nothing-stands.ts";
import { watchStore } from "./watch-store.ts";

type LogLine = Parameters<Log>[0];

export interface Answer {
  // The tests say what they expect of an answer; its type is theirs to know.
  // biome-ignore lint/suspicious/noExplicitAny: see above
  readonly data: any;
  readonly errors: readonly { message: string; extensions: Record<string, unknown> }[];
  /** Names of the store's functions that were called, in order. */
  readonly calls: readonly string[];
}

/** The API without HTTP, over a store that holds the changes, one revision each; a clock that stands still. */
export async function openApi(
  changes: readonly Change[],
  base: Store = openMemoryStore(),
  highestCost = 10_000,
  rows: readonly ReferenceRow[] = [],
) {
  for (const change of changes) {
    const revision = await base.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
    if (isProblem(revision)) throw new Error(revision.message);
  }
  const logged: LogLine[] = [];
  let suffixes = 0;
  const results = keepResults();
  const surveys = openSurveys(base);
  const newSuffix = () => `s${++suffixes}`;
  const live = openLive(base, {
    after: await base.newestWrite(),
    by: "tests",
    log: (line) => logged.push(line),
  });
  const apollo = createApollo(buildSchema(), { highestCost, log: (line) => logged.push(line), newSuffix });

  const ask = async (
    query: string,
    variables: Record<string, unknown> = {},
    caller: Caller = LOCAL_CALLER,
  ): Promise<Answer> => {
    const calls: string[] = [];
    const store = watchStore(base, (call) => calls.push(call));
    const contextValue = createContext(
      {
        store,
        tables: tablesOf(rows),
        now: () => "2026-02-02T00:00:00Z",
        ...{ newSuffix, weigher: weighHere, results, standings: NOTHING_STANDS, surveys, datings: undefined },
        ...{ news: live.news, presence: live.presence, counts: live.counts },
      },
      caller,
    );
    const { body } = await apollo.executeOperation({ query, variables }, { contextValue });
    if (body.kind !== "single") throw new Error("Not a single answer");
    // Read back from text, as a client does.
    const { data, errors = [] } = JSON.parse(JSON.stringify(body.singleResult));
    return { data, errors, calls };
  };
  return { store: base, ask, logged, close: () => apollo.stop() };
}
