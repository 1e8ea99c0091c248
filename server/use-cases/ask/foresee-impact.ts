import type { Change } from "../../domain/change.ts";
import type { Examination } from "../../domain/examination.ts";
import { reviewersNeeded } from "../../domain/proposals/review.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { ShiftsInWords } from "../../domain/shift-words.ts";
import { openTurns } from "../../ports/open-turns.ts";
import type { Results } from "../../ports/results.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import type { Acting } from "../acting.ts";
import { hiddenFrom } from "../people/hidden-from.ts";
import { bothNeighbourhoods, readBeside } from "./both-neighbourhoods.ts";
import { type Examined, examinedOn } from "./examine-piece.ts";
import { type ForeseenDisagreements, foreseeDisagreements } from "./foresee-disagreements.ts";
import { type Preview, type PreviewOptions, previewChange } from "./preview-change.ts";
import { isFit, sayShifts } from "./say-shifts.ts";

/** One stored piece of which something would be said otherwise. */
export interface MovedPiece {
  readonly examination: Examination;
  readonly words: ShiftsInWords;
  /** The answers; left out where the piece cannot be examined on that side. */
  readonly before?: Examined;
  readonly after?: Examined;
}

/** What accepting a change would do, were it accepted now. Nothing is stored. */
export interface Impact {
  readonly revision: RevisionNumber;
  /** Stored examinations that it can touch and that were examined both ways; those left for another time. */
  readonly looked: number;
  /** Where one can go on. */
  readonly reached?: number;
  readonly left: number;
  /** All whose conclusions would be others; of the first of them that the caller may see the words. */
  readonly movedCount: number;
  readonly moved: readonly MovedPiece[];
  /** How many of those whose conclusions would be others the caller may not see (C26). */
  readonly hidden: number;
  readonly reviewersNeeded: 1 | 2;
  readonly disagreements: ForeseenDisagreements;
}

/** Milliseconds for which examinations are looked at in one go; what is known by then is told, and one can go on from there. */
const LONGEST_GO = 2000;

export interface ForeseeOptions extends PreviewOptions {
  /** Counts milliseconds; those of the clock unless said otherwise. */
  readonly now?: () => number;
}

/**
 * Foresees what a change that the store would take does to stored examinations (K10), as far as one comes in one go, and to
 * disagreements, where it does not go on from an earlier one.
 */
export async function foreseeImpact(
  ports: Pick<Acting, "caller"> & {
    readonly store: Store;
    readonly standings: Standings;
    readonly results: Results;
  },
  change: Change,
  first: number,
  { now = () => performance.now(), ...options }: ForeseeOptions = {},
): Promise<Impact> {
  const { revision, looked, reached, left, shifted } = await previewInOneGo(ports, change, options, now);
  const beside = await readBeside(ports.store, change, revision);
  const hidden = await hiddenFrom(
    ports.store,
    ports.caller,
    shifted.map(({ examination }) => examination.id),
  );
  const seen = shifted.filter(({ examination }) => !hidden.has(examination.id));
  const moved: MovedPiece[] = [];
  const turn = openTurns();
  for (const { examination } of seen.slice(0, first)) {
    await turn();
    if (options.stop?.aborted) break;
    const { piece } = examination;
    const { now, after } = await bothNeighbourhoods(ports.store, piece, change, beside, revision);
    moved.push({
      examination,
      words: sayShifts(piece, now, after, ports.results) ?? { lines: [] },
      ...(isFit(piece, now) ? { before: examinedOn(piece, now, ports.results) } : {}),
      ...(isFit(piece, after) ? { after: examinedOn(piece, after, ports.results) } : {}),
    });
  }
  return {
    ...{ revision, looked, left, moved, movedCount: shifted.length, hidden: hidden.size },
    ...(reached === undefined ? {} : { reached }),
    reviewersNeeded: reviewersNeeded(shifted.length),
    disagreements:
      options.after === undefined
        ? await foreseeDisagreements(ports.store, change, revision, options.stop)
        : { created: [], settled: [] },
  };
}

/** Looks at one examination at least, so that one comes through however slow it is. */
function previewInOneGo(
  ports: Parameters<typeof previewChange>[0],
  change: Change,
  { stop, onLooked, ...options }: PreviewOptions,
  now: () => number,
): Promise<Preview> {
  const enough = new AbortController();
  let begin: { readonly at: number; readonly looked: number } | undefined;
  return previewChange(ports, change, {
    ...options,
    stop: stop === undefined ? enough.signal : AbortSignal.any([stop, enough.signal]),
    onLooked: (looked, of, shifted) => {
      begin ??= { at: now(), looked };
      if (looked > begin.looked && now() - begin.at > LONGEST_GO) enough.abort();
      onLooked?.(looked, of, shifted);
    },
  });
}
