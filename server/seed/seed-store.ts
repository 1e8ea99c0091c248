import type { Change } from "../domain/change.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import { isProblem, type Problem } from "../domain/problem.ts";
import type { Store } from "../ports/store.ts";
import type { Seed } from "./read-seed.ts";

/**
 * Gives a store without a revision its first one and the pieces of the seed; leaves any other store as it is. Says
 * whether it did. Pieces that are there already are kept, so that a start broken off is finished by the next, and two programs that
 * start on one new store at the same time do not stand in each other's way.
 */
export async function seedStore(store: Store, seed: Seed): Promise<boolean | Problem> {
  if ((await store.newestRevision()) !== undefined) return false;
  for (const { id, piece } of seed.pieces) {
    if ((await store.examination(id)) !== undefined) continue;
    const created = await store.createExamination(id, piece, seed.at);
    if (isProblem(created) && created.code !== "DUPLICATE_ID") return created;
  }
  const { change, at, by, message } = seed;
  const revision = await store.commit({ change, at, by, message, expected: 0 });
  if (!isProblem(revision)) return true;
  return revision.code === "CHANGED_MEANWHILE" ? false : named(revision, change);
}

/** Says which thing of the seed a problem is about, rather than the number of its edit. */
function named(refusal: Problem, change: Change): Problem {
  const edit = change[Number(refusal.path[0])];
  if (edit === undefined) return refusal;
  return { ...refusal, message: `Seed ${edit.kind} ${idOfEdit(edit)}: ${refusal.message}` };
}
