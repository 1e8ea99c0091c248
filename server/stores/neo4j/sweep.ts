import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Database, Run } from "./database.ts";
import { STILL_STANDS } from "./migrations.ts";
import { endStage, findWrite, isBeingFilled, keepStage, lockStore, type StoreState } from "./store-state.ts";
import { KINDS, LABELS } from "./version-row.ts";

const NODES_AT_ONCE = 5_000;

/** Each takes some nodes away, or ends of nodes, that lie beyond what is visible, and says how many. */
const SWEEPS: readonly string[] = [
  ...KINDS.flatMap((kind) => [
    `MATCH (n:${LABELS[kind]}Version {store: $store}) WHERE n.since > $revision WITH n LIMIT $most DETACH DELETE n`,
    `MATCH (n:${LABELS[kind]}Version {store: $store}) WHERE $revision < n.until AND n.until < ${STILL_STANDS}
     WITH n LIMIT $most SET n.until = ${STILL_STANDS}`,
  ]),
  "MATCH (n:ChangePart {store: $store}) WHERE n.revision > $revision WITH n LIMIT $most DELETE n",
  "MATCH (n:Revision {store: $store}) WHERE n.number > $revision WITH n LIMIT $most DELETE n",
  "MATCH (n:Write {store: $store}) WHERE n.sequence > $sequence WITH n LIMIT $most DELETE n",
  "MATCH (n:ExaminationVersion {store: $store}) WHERE n.sequence > $sequence WITH n LIMIT $most DELETE n",
  ...KINDS.map(
    (kind) =>
      `MATCH (n:${LABELS[kind]} {store: $store}) WHERE NOT EXISTS { (n)--() } WITH n LIMIT $most DELETE n`,
  ),
];

/** Takes away what a write of several transactions left when it was broken off. The store must be kept under `key`. */
export async function sweep(database: Database, key: string): Promise<Problem | undefined> {
  const inStage = (what: (run: Run, state: StoreState) => Promise<number>): Promise<number | Problem> =>
    database.write(async (run) => {
      const state = await lockStore(run, key);
      if (state.stagedBy !== key) return (await findWrite(run, key)) === undefined ? isBeingFilled() : 0;
      await keepStage(run, key, 0);
      return what(run, state);
    }, "step");
  for (const statement of SWEEPS)
    for (let swept = NODES_AT_ONCE; swept === NODES_AT_ONCE; ) {
      const answer = await inStage(async (run, { revision, sequence }) => {
        const [row] = await run<{ count: number }>(`${statement} RETURN count(*) AS count`, {
          ...{ revision, sequence },
          most: NODES_AT_ONCE,
        });
        return row?.count ?? 0;
      });
      if (isProblem(answer)) return answer;
      swept = answer;
    }
  const ended = await inStage(async (run) => {
    await endStage(run);
    return 0;
  });
  return isProblem(ended) ? ended : undefined;
}
