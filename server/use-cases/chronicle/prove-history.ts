import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import { CHECKPOINT_CARD, checkpointOf } from "../../domain/proof/checkpoint.ts";
import type { Progress } from "../../ports/progress.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import type { Verify } from "../../ports/verify.ts";
import { judgeCheckpoint } from "./judge-checkpoint.ts";

/** What was found sound. */
export interface Proven {
  readonly revisions: number;
  readonly head: string;
  readonly checkpoints: number;
}

/** Makes the whole history again, then holds every checkpoint of the house against it; the first thing that is wrong. */
export async function proveHistory(
  {
    store,
    seals,
    verify,
  }: { readonly store: Store; readonly seals: Pick<Seals, "findFault">; readonly verify: Verify },
  progress: Progress,
): Promise<Proven | Problem> {
  const verified = await verify(progress);
  if (isProblem(verified)) return verified;
  const cards = await readAll((page) => store.listCards({ kind: CHECKPOINT_CARD }, page));
  for (const [done, card] of cards.entries()) {
    progress(() => `Holding checkpoint ${done + 1} of ${cards.length} against it`);
    const checkpoint = checkpointOf(card);
    const { holds, says } = await judgeCheckpoint({ store, seals }, checkpoint);
    if (!holds)
      return problem("STORE_CORRUPT", `Checkpoint ${card.id} of ${checkpoint.at} does not hold. ${says}`, [
        ...["checkpoint", card.id, "revision"],
        checkpoint.revision,
      ]);
  }
  return { ...verified, checkpoints: cards.length };
}
