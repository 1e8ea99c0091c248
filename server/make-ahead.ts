import type { Log } from "./ports/log.ts";
import type { Store } from "./ports/store.ts";
import type { Surveys } from "./use-cases/ask/surveys/open-surveys.ts";

/** Years that no claim can mean: a search that needs all that is searched, and finds nothing. */
const NO_YEARS = [1, 0] as const;

export interface MadeAhead {
  /** Resolves when searches need nothing more of the whole graph, or what they need could not be made. */
  readonly searchable: Promise<void>;
  /** Says that searches are not ready yet. */
  readonly findUnready: () => string | undefined;
  readonly stop: () => void;
}

/**
 * Makes what searches and surveys need of the whole graph, one after the other, so that nobody has to wait for it who asks
 * first; not before `after`. `stop` keeps from beginning another, and from telling what failed since the store was closed.
 */
export function makeAhead(
  store: Pick<Store, "search">,
  surveys: Surveys,
  log: Log,
  after: Promise<unknown> = Promise.resolve(),
): MadeAhead {
  let isStopped = false;
  let areSearchesReady = false;
  const make = async (what: string, work: () => Promise<unknown>): Promise<void> => {
    if (isStopped) return;
    const start = performance.now();
    try {
      await work();
      const took = Math.round(performance.now() - start);
      if (took > SOON) log({ level: "info", event: "made ahead", what, took });
    } catch (failure) {
      if (!isStopped) log({ level: "warn", event: "not made ahead", what, error: String(failure) });
    }
  };
  const makeSearchable = async (): Promise<void> => {
    await after.catch(() => undefined);
    await make("searches by words", () => store.search("a", {}, 1));
    await make("searches by place and years", () => store.search("", { years: NO_YEARS }, 1));
    areSearchesReady = true;
  };
  const searchable = makeSearchable();
  const all = async (): Promise<void> => {
    await searchable;
    await make("the counts of regions", () => surveys.regions());
    await make("what disagrees", () => surveys.disagreements());
  };
  all();
  return {
    searchable,
    findUnready: () => (areSearchesReady ? undefined : "has no index yet"),
    stop: () => {
      isStopped = true;
    },
  };
}

/** What took less is not told, in milliseconds. */
const SOON = 1_000;
