import type { Change, Graph } from "#server/domain/change.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readAll } from "#server/ports/read-all.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type Act, changeOf } from "./any-edits.ts";
import { aCommit } from "./build-change.ts";
import { answered } from "./expect-answer.ts";

/** A store in memory on which acts are made one after the other. */
export async function openActs(beginning: Change) {
  const store = openMemoryStore();
  let minutes = 0;
  /** Each later than the one before. */
  const now = () => new Date(Date.UTC(2026, 0, 1, 0, ++minutes)).toISOString();
  answered(await store.commit(aCommit(beginning, { at: now() })));
  /** The change that was made, or nothing where it came to nothing or was refused. */
  const act = async (next: Act): Promise<Change | undefined> => {
    const change = changeOf(next, await graphOf(store));
    if (change.length === 0) return undefined;
    return isProblem(await store.commit(aCommit(change, { at: now() }))) ? undefined : change;
  };
  return { store, act, now };
}

/** The graph as it stands in a store, without sources. */
export async function graphOf(store: Store): Promise<Graph> {
  const terms = await readAll((page) => store.listTerms({}, page));
  const claims = await readAll((page) => store.listClaims({}, page));
  const byId = <Thing extends { readonly id: string }>(things: readonly Thing[]) =>
    new Map(things.map((thing) => [thing.id as string, thing]));
  return { terms: byId(terms), claims: byId(claims), sources: new Map() };
}
