import { isProblem } from "../../domain/problem.ts";
import { type Checkpoint, type CheckpointFields, checkpointWrite } from "../../domain/proof/checkpoint.ts";
import { NO_HASH } from "../../domain/revision.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import type { Refusal } from "../refusal.ts";

/** Signs what the store holds now, and keeps that; the checkpoint is a write of its own, after all that it tells of. */
export async function signCheckpoint(
  ports: Acting & { readonly store: Store; readonly seals: Seals; readonly newSuffix: NewSuffix },
): Promise<{ readonly id: string; readonly checkpoint: Checkpoint } | Refusal> {
  const refusal = refuseCaller(ports, "sign a checkpoint");
  if (refusal) return refusal;
  const { store, seals } = ports;
  const along = signed(ports, "sign checkpoint");
  const checkpoint = await seals.seal<CheckpointFields>({
    format: "scribeline/checkpoint",
    version: 1,
    ...(await readHeads(store)),
    at: along.deed.at,
  });
  const card = checkpointWrite(ports.newSuffix(), checkpoint);
  const written = await store.writeCards({ ...along, cards: [card] });
  return isProblem(written) ? { refused: [written] } : { id: card.id, checkpoint };
}

/** The newest revision and the newest write of one moment. */
async function readHeads(
  store: Store,
): Promise<Pick<CheckpointFields, "revision" | "head" | "sequence" | "ledger">> {
  for (;;) {
    const before = await store.newestRevision();
    const sequence = await store.newestWrite();
    const [write] = sequence === 0 ? [] : await store.writesAfter(sequence - 1, 1);
    const after = await store.newestRevision();
    if (before?.hash !== after?.hash) continue;
    return {
      ...{ revision: after?.number ?? 0, head: after?.hash ?? NO_HASH },
      ...{ sequence, ledger: write?.hash ?? NO_HASH },
    };
  }
}
