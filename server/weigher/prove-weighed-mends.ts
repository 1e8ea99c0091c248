import { oddsFor } from "../domain/weighing/chosen-odds.ts";
import type { WeighingJob } from "../domain/weighing/job.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";
import { readSubject } from "../reasoning/check.ts";
import { knowGraph } from "../reasoning/known-graph.ts";
import { proveMends } from "../reasoning/mends/prove-mends.ts";
import { openHighs } from "../solver/solve-by-highs.ts";

type Both = NonNullable<Weighing["mends"]>;

/** Mends of which the search could not prove that nothing asks less, as a solver of integer programs leaves them (M9). */
export async function proveWeighedMends(
  { piece, neighbourhood, assumptions }: WeighingJob,
  mends: Both,
): Promise<Both> {
  const solve = await openHighs();
  const subject = readSubject(piece, knowGraph(neighbourhood, assumptions), assumptions);
  const odds = oddsFor(piece.odds);
  return {
    possible: proveMends(subject, odds, mends.possible, solve),
    usual: proveMends(subject, odds, mends.usual, solve),
  };
}

export const areProved = ({ possible, usual }: Both): boolean => possible.proved && usual.proved;
