import type { Checkpoint } from "../../domain/proof/checkpoint.ts";
import { NO_HASH } from "../../domain/revision.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";

/** Whether the store still holds what a checkpoint says, and a sentence that says it. */
export interface JudgedCheckpoint {
  readonly holds: boolean;
  readonly says: string;
}

const fails = (says: string): JudgedCheckpoint => ({ holds: false, says });

/** Holds a checkpoint, of this house or of another, against the store. */
export async function judgeCheckpoint(
  { store, seals }: { readonly store: Store; readonly seals: Pick<Seals, "findFault"> },
  checkpoint: Checkpoint,
): Promise<JudgedCheckpoint> {
  const { revision, head, sequence, ledger } = checkpoint;
  const fault = seals.findFault(checkpoint);
  if (fault !== undefined) return fails(`This checkpoint proves nothing: ${fault}.`);
  const headHere = revision === 0 ? NO_HASH : (await store.revision(revision))?.hash;
  if (headHere === undefined)
    return fails(
      `The checkpoint tells of revision ${revision}, and the newest here is ${(await store.newestRevision())?.number ?? 0}: what came later was cut off, or it is of another history.`,
    );
  if (headHere !== head)
    return fails(
      `Revision ${revision} has another hash here than was signed: the history was rewritten at that revision or before it, or the checkpoint is of another history.`,
    );
  const [write] = sequence === 0 ? [] : await store.writesAfter(sequence - 1, 1);
  if (sequence > 0 && write === undefined)
    return fails(
      `The checkpoint tells of write ${sequence} of the ledger, and it ends with ${await store.newestWrite()} here: what came later was cut off.`,
    );
  if ((write?.hash ?? NO_HASH) !== ledger)
    return fails(
      `Revision ${revision} is here as it was signed, but write ${sequence} of the ledger is not: what was done besides (examinations, people, proposals) was rewritten at that write or before it.`,
    );
  return {
    holds: true,
    says:
      revision === 0
        ? "Nothing was held when this was signed."
        : `Revision ${revision} and write ${sequence} of the ledger are here as they were signed.`,
  };
}
