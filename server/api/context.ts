import type { Caller } from "../domain/people/caller.ts";
import type { Clock } from "../ports/clock.ts";
import type { CountsUnderWay } from "../ports/counts-under-way.ts";
import type { DatingReader } from "../ports/dating-reader.ts";
import type { NewSuffix } from "../ports/ids.ts";
import type { News } from "../ports/news.ts";
import type { Presence } from "../ports/presence.ts";
import type { ReferenceTables } from "../ports/reference-tables.ts";
import type { Results } from "../ports/results.ts";
import type { Standings } from "../ports/standings.ts";
import type { Store } from "../ports/store.ts";
import type { Weigher } from "../ports/weigher.ts";
import type { Surveys } from "../use-cases/ask/surveys/open-surveys.ts";
import { shownStore } from "../use-cases/people/shown-store.ts";
import { createLoaders, type Loaders } from "./loaders.ts";

/** What the use cases stand on. */
export interface Ports {
  readonly store: Store;
  readonly tables: ReferenceTables;
  readonly now: Clock;
  readonly newSuffix: NewSuffix;
  readonly weigher: Weigher;
  readonly results: Results;
  readonly standings: Standings;
  readonly surveys: Surveys;
  readonly news: News;
  readonly presence: Presence;
  readonly counts: CountsUnderWay;
  /** Answers faster of the newest revision, where there is one. */
  readonly datings: DatingReader | undefined;
}

/** What one request stands on: the ports, and what it has loaded so far. */
export interface Context extends Ports {
  /** As far as the caller may see it. */
  readonly store: Store;
  readonly load: Loaders;
  /** Who asks; nobody where one has to sign in first. */
  readonly caller: Caller | undefined;
  /** The live connection that it came by. */
  readonly connection?: object;
  /** Says when nobody waits for the answer any more. */
  readonly stop?: AbortSignal;
}

/** A fresh context; nothing loaded in one request is seen by another. */
export function createContext(ports: Ports, caller: Caller | undefined, stop?: AbortSignal): Context {
  const store = shownStore(ports.store, caller);
  return { ...ports, store, caller, load: createLoaders(store), ...(stop ? { stop } : {}) };
}
