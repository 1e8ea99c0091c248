import { canonicalJson } from "../domain/canonical-json.ts";
import type { Change, Edit } from "../domain/change.ts";
import { compareIds } from "../domain/compare.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import { readAll } from "../ports/read-all.ts";
import { readThrough } from "../ports/read-through.ts";
import { LARGEST_PAGE, type Store } from "../ports/store.ts";
import type { Seed } from "./read-seed.ts";

/**
 * Brings a store that knows nothing but a seed up to a newer one, as one more revision, so that answers given before can
 * still be had. Says how many edits that took: none where the seed is the same, or where anybody else has changed the
 * graph, were it only just now. Pieces of the seed that are not there yet are added; those that are there are the user's own.
 */
export async function updateSeed(store: Store, seed: Seed): Promise<number | Problem> {
  const newest = await store.newestRevision();
  if (newest === undefined) return 0;
  if (await hasBeenChanged(store, seed)) return 0;
  for (const { id, piece } of seed.pieces) {
    if ((await store.examination(id)) !== undefined) continue;
    const created = await store.createExamination(id, piece, seed.at);
    if (isProblem(created) && created.code !== "DUPLICATE_ID") return created;
  }
  const change = changeTo(seed.change, await readStanding(store));
  if (change.length === 0) return 0;
  const { at, by, message } = seed;
  const revision = await store.commit({ change, at, by, message, expected: newest.number });
  if (!isProblem(revision)) return change.length;
  return revision.code === "CHANGED_MEANWHILE" ? 0 : revision;
}

/** Whether anybody but a seed has changed the graph; most probably lately. */
async function hasBeenChanged(store: Store, seed: Seed): Promise<boolean> {
  let after: string | undefined;
  do {
    const page = await store.revisions({ first: LARGEST_PAGE, ...(after === undefined ? {} : { after }) });
    if (page.rows.some(({ by }) => by !== seed.by)) return true;
    after = page.hasMore ? page.cursors.at(-1) : undefined;
  } while (after !== undefined);
  return false;
}

async function readStanding(store: Store): Promise<ReadonlyMap<string, Edit>> {
  const terms = (await readThrough(store.allTerms({}))).toSorted(compareIds);
  const claims = (await readThrough(store.allClaims({}))).toSorted(compareIds);
  const sources = await readAll((page) => store.listSources(page));
  const standing: readonly Edit[] = [
    ...terms.map((before): Edit => ({ kind: "term", before })),
    ...claims.map((before): Edit => ({ kind: "claim", before })),
    ...sources.map((before): Edit => ({ kind: "source", before })),
  ];
  return new Map(standing.map((edit) => [keyOf(edit), edit]));
}

const keyOf = (edit: Edit): string => `${edit.kind} ${idOfEdit(edit)}`;

/** What turns the things that stand into those of the seed: first what is new or other, then what is withdrawn. */
function changeTo(seed: Change, standing: ReadonlyMap<string, Edit>): Change {
  const wanted = new Set(seed.map(keyOf));
  const other = seed
    .map((edit) => ({ ...standing.get(keyOf(edit)), ...edit }) as Edit)
    .filter(({ before, after }) => canonicalJson(before) !== canonicalJson(after));
  return [...other, ...[...standing].flatMap(([key, edit]) => (wanted.has(key) ? [] : [edit]))];
}
