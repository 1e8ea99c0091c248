import { CHECKPOINT_CARD, type Checkpoint, checkpointOf } from "../../domain/proof/checkpoint.ts";
import type { House, Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import type { Refusal } from "../refusal.ts";
import { type JudgedCheckpoint, judgeCheckpoint } from "./judge-checkpoint.ts";

const AT_ONCE = 20;

export interface ListedCheckpoint extends JudgedCheckpoint {
  readonly id: string;
  readonly checkpoint: Checkpoint;
}

/** The checkpoints of the house, newest first, each held against the store; and by which keys the house signs. */
export async function listCheckpoints(
  ports: Acting & { readonly store: Store; readonly seals: Seals },
  after: string | undefined,
): Promise<
  | {
      readonly house: House;
      readonly checkpoints: readonly ListedCheckpoint[];
      readonly total: number;
      readonly after: string | undefined;
    }
  | Refusal
> {
  const refusal = refuseCaller(ports, "read the graph");
  if (refusal) return refusal;
  const page = await ports.store.listCards(
    { kind: CHECKPOINT_CARD },
    { first: AT_ONCE, ...(after === undefined ? {} : { after }) },
    "down",
  );
  const checkpoints = await Promise.all(
    page.rows.map(async (card): Promise<ListedCheckpoint> => {
      const checkpoint = checkpointOf(card);
      return { id: card.id, checkpoint, ...(await judgeCheckpoint(ports, checkpoint)) };
    }),
  );
  return {
    house: await ports.seals.house(),
    ...{ checkpoints, total: page.total, after: page.hasMore ? page.cursors.at(-1) : undefined },
  };
}
