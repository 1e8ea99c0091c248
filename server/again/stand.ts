import { ASSUMED } from "../domain/assumptions.ts";
import type { Examination, Piece } from "../domain/examination.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Verdicts } from "../domain/verdicts.ts";
import { revisionAt } from "../ports/revision-at.ts";
import type { Standing } from "../ports/standings.ts";
import type { Store } from "../ports/store.ts";
import { askFor } from "../reasoning/ask-for.ts";
import { digestNeighbourhood } from "./digest-neighbourhood.ts";
import type { Reads } from "./impact-index.ts";
import { digestPiece } from "./keep-results.ts";
import { readsOf } from "./reads-of.ts";

/** What is kept of one stored examination. */
export interface Stood {
  readonly version: number;
  readonly revision: RevisionNumber;
  /** Of all that the answer follows from (K1). */
  readonly digest: string;
  readonly verdicts: Verdicts;
  readonly since: Standing["since"];
}

export interface Stander {
  readonly store: Store;
  /** What a piece comes to. */
  readonly verdictsOn: (piece: Piece, neighbourhood: Neighbourhood) => Verdicts;
  /** Lets others go on between two pieces of work. */
  readonly rest: () => Promise<void>;
}

/** Examines again on the newest revision; where the digest is as it was, the verdicts are too, and nothing is examined (K6). */
export async function stand(
  { store, verdictsOn, rest }: Stander,
  { version, piece, changedAt }: Examination,
  before: Stood | undefined,
): Promise<{ readonly stood: Stood; readonly reads: Reads; readonly isCutOff: boolean }> {
  const ask = askFor(piece, ASSUMED);
  const own = digestPiece(piece);
  const digestOn = (neighbourhood: Neighbourhood) => `${own} ${digestNeighbourhood(neighbourhood)}`;
  const now = await store.neighbourhood(ask);
  const digest = digestOn(now);
  const isCutOff = before?.digest === digest;
  await rest();
  const verdicts = isCutOff ? before.verdicts : verdictsOn(piece, now);
  const stood = { version, revision: now.revision, digest, verdicts };
  const result = (since: Stood["since"]) => ({
    ...{ stood: { ...stood, since }, reads: readsOf(now, ask), isCutOff },
  });
  if (before?.version === version)
    return result(isCutOff ? before.since : { ...before.since, isSame: false });
  const revision = Math.min(now.revision, await revisionAt(store, changedAt));
  if (revision === now.revision) return result({ revision, verdicts, isSame: true });
  await rest();
  const then = await store.neighbourhood({ ...ask, at: revision });
  if (digestOn(then) === digest) return result({ revision, verdicts, isSame: true });
  await rest();
  return result({ revision, verdicts: verdictsOn(piece, then), isSame: false });
}
