import type { NewsKind, Told, ToldSo } from "../../domain/live/told.ts";
import { toldOf } from "../../domain/live/told-of.ts";
import type { Caller } from "../../domain/people/caller.ts";
import { type Action, mayDo } from "../../domain/people/may-do.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { News } from "../../ports/news.ts";
import { orStopped } from "../../ports/or-stopped.ts";
import type { Store } from "../../ports/store.ts";
import { findProposal } from "../ask/find-proposal.ts";
import { hiddenFrom } from "../people/hidden-from.ts";

/** What is followed. */
export interface NewsAsk {
  /** The number of the last write that is known; left out, what comes from now on. */
  readonly since?: number;
  /** Left out: all. */
  readonly kinds?: readonly NewsKind[];
  /** Only this examination or proposal, and the graph if it is among the kinds. */
  readonly about?: string;
}
interface Ports {
  readonly store: Store;
  readonly news: News;
  readonly caller: Caller | undefined;
}

/** Writes that can be caught up with; more are read anew. */
export const MOST_MISSED = 20_000;
const AT_ONCE = 500;
/** Milliseconds between two tellings: what is written in between is told together. */
const REST = 20;

const NEEDED = {
  examination: "read an examination",
  graph: "read the graph",
  proposal: "read a proposal",
} as const satisfies Record<NewsKind, Action>;

/**
 * What is changed, in the order of the ledger, none twice and none left out: first what was missed since a write, then each as it
 * happens. The first is told at once, if only to say how far it is known. Whether the caller may know of it is asked each time; where
 * they may no longer, it ends with the refusal.
 */
export async function* followNews(
  ports: Ports,
  ask: NewsAsk,
  stop: AbortSignal,
  rest = REST,
): AsyncGenerator<ToldSo> {
  const { news } = ports;
  const wanted = ask.kinds ?? (Object.keys(NEEDED) as readonly NewsKind[]);
  let at = ask.since ?? news.sequence();
  let owes = true;
  if (news.sequence() - at > MOST_MISSED) {
    at = news.sequence();
    yield { sequence: at, told: [], hasMore: false, readAnew: true };
    owes = false;
  }
  while (!stop.aborted) {
    const writes = await news.after(at, AT_ONCE);
    const told: Told[] = [];
    for (const each of writes.flatMap(toldOf)) {
      if (!wanted.includes(each.kind)) continue;
      if (ask.about !== undefined && each.kind !== "graph" && each.id !== ask.about) continue;
      const may = await mayKnow(ports, each);
      if (isProblem(may)) throw new NewsEnded(may);
      if (may) told.push(each);
    }
    at = writes.at(-1)?.sequence ?? at;
    const hasMore = news.sequence() > at;
    const readAnew = writes.some(({ restored }) => restored);
    if (told.length > 0 || readAnew || (owes && !hasMore)) {
      owes = hasMore;
      yield { sequence: at, told, hasMore, readAnew };
      if (!hasMore) await orStopped(new Promise((resolve) => setTimeout(resolve, rest)), stop);
    }
    if (!hasMore) await news.beyond(at, stop);
  }
}

/** Why one may not follow any longer. */
export class NewsEnded extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** A problem where nothing of the kind may be known; false for the one thing that is as if it were not there. */
async function mayKnow(ports: Ports, told: Told): Promise<Problem | boolean> {
  const problem = mayDo(ports.caller, NEEDED[told.kind]);
  if (problem !== undefined) return problem;
  if (told.kind === "examination") return (await hiddenFrom(ports.store, ports.caller, [told.id])).size === 0;
  if (told.kind !== "proposal" || !told.id.startsWith("proposal.")) return true;
  return (await findProposal(ports, told.id)) !== undefined;
}
