import { sha256 } from "../chain/sha256.ts";
import { ASSUMED } from "../domain/assumptions.ts";
import { boundedCache } from "../domain/bounded-cache.ts";
import { canonicalJson } from "../domain/canonical-json.ts";
import type { Piece } from "../domain/examination.ts";
import type { Report } from "../domain/report.ts";
import { ASSUMED_ODDS } from "../domain/weighing/assumed-odds.ts";
import type { WeighingJob } from "../domain/weighing/job.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";
import type { Results } from "../ports/results.ts";
import { pieceAsRead } from "../reasoning/as-read.ts";
import { ENGINE } from "../reasoning/engine.ts";
import { examine } from "../reasoning/examine.ts";
import { digestNeighbourhood } from "./digest-neighbourhood.ts";

/** Counted for whoever measures. */
export interface ResultCounts {
  hits: number;
  misses: number;
}
export interface KeptResults extends Results {
  readonly counts: Readonly<ResultCounts>;
}

/** Reports are some 100 KB each, weighings as much. */
const MOST_REPORTS = 400;
const MOST_WEIGHINGS = 200;

const keyOf = (...read: readonly unknown[]): string => sha256(canonicalJson(read));

/** What a report follows from beside the neighbourhood, as one text: engine, assumptions, piece. */
export const digestPiece = (piece: Piece): string => keyOf(ENGINE, ASSUMED, pieceAsRead(piece));

/**
 * Keeps reports and weighings in memory by engine, assumptions, piece and what the engine reads of the neighbourhood. They
 * hold on every revision on which all that is the same: the revision alone is put on when they are given out.
 */
export function keepResults(mostReports = MOST_REPORTS, mostWeighings = MOST_WEIGHINGS): KeptResults {
  const reports = boundedCache<string, Report>(mostReports);
  const weighings = boundedCache<string, Weighing>(mostWeighings);
  const counts: ResultCounts = { hits: 0, misses: 0 };
  const find = <Result extends Report | Weighing>(
    kept: { readonly get: (key: string) => Result | undefined },
    key: string,
    revision: number,
  ): Result | undefined => {
    const found = kept.get(key);
    if (found === undefined) counts.misses++;
    else counts.hits++;
    return found && { ...found, revision };
  };
  return {
    counts,
    report: (piece, neighbourhood) => {
      const key = `${digestPiece(piece)} ${digestNeighbourhood(neighbourhood)}`;
      const found = find(reports, key, neighbourhood.revision);
      if (found) return found;
      const report = examine(piece, neighbourhood);
      reports.set(key, report);
      return report;
    },
    weighing: async (job, weigh) => {
      const key = keyOfJob(job);
      const found = find(weighings, key, job.neighbourhood.revision);
      if (found) return found;
      const weighing = await weigh();
      if (weighing.missing.every(({ why }) => why !== "stopped")) weighings.set(key, weighing);
      return weighing;
    },
  };
}

/** The findings of a job follow from its piece and neighbourhood. */
const keyOfJob = ({ piece, neighbourhood, assumptions, stages, lookFor }: WeighingJob): string =>
  keyOf(
    ...[ENGINE, assumptions, ASSUMED_ODDS, pieceAsRead(piece), stages],
    digestNeighbourhood(neighbourhood),
    lookFor ? [lookFor.features, digestNeighbourhood(lookFor.neighbourhood)] : null,
  );
