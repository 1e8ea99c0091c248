import type { Edit } from "../domain/change.ts";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import type { Revision } from "../domain/revision.ts";
import type { Store } from "../ports/store.ts";
import { planGraph, type Wishes } from "./graph-plan.ts";
import { makeFamily, makeShared } from "./make-graph.ts";
import { makePiece } from "./make-piece.ts";
import { worldOf } from "./world.ts";

/** Edits after which a revision ends, with the family that stands in it. */
const EDITS_A_REVISION = 20_000;
const BY = "npm run generate";
const MESSAGE = "Made up to measure with; it says nothing of real work.";
/** The same for all, so that the same wishes give the same hashes. */
const AT = "2026-01-01T00:00:00.000Z";

/**
 * Writes a made-up graph and made-up pieces into an empty store, in several revisions; `said` is called after each with
 * the number of claims so far. Refuses a store that holds a revision.
 */
export async function writeGraph(
  store: Store,
  wishes: Wishes & { readonly examinations: number },
  said: (revision: Revision, claims: number) => void = () => {},
): Promise<Revision | Problem> {
  if ((await store.newestRevision()) !== undefined)
    return problem(
      "STORE_NOT_EMPTY",
      "The store holds a graph already; a made-up one is only written where nothing is. Choose a new data folder (SCRIBELINE_DATA) or store.",
    );
  const world = worldOf(planGraph(wishes));
  let change: Edit[] = [];
  let newest: Revision | undefined;
  let claims = 0;
  const { families } = world.plan;
  for (let family = -1; family < families; family++) {
    for (const { kind, thing } of family === -1 ? makeShared(world) : makeFamily(world, family)) {
      if (kind === "claim") claims++;
      change.push({ kind, after: thing } as Edit);
    }
    if (change.length < EDITS_A_REVISION && family < families - 1) continue;
    const revision = await store.commit({
      ...{ change, by: BY, at: AT, message: MESSAGE, expected: newest?.number ?? 0 },
    });
    if (isProblem(revision)) return revision;
    newest = revision;
    said(revision, claims);
    change = [];
  }
  for (let number = 1; number <= wishes.examinations; number++) {
    const { id, piece } = makePiece(world, number);
    const kept = await store.createExamination(id, piece, AT);
    if (isProblem(kept)) return kept;
  }
  return newest as Revision;
}
