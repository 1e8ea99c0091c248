import { ASSUMED, BUDGET } from "../../domain/assumptions.ts";
import type { Datings, DatingsAsk } from "../../domain/datings.ts";
import type { Piece } from "../../domain/examination.ts";
import { isProblem } from "../../domain/problem.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { DatingReader } from "../../ports/dating-reader.ts";
import type { Store } from "../../ports/store.ts";
import { claimedYears } from "../../reasoning/check.ts";
import { datingsIn } from "../../reasoning/datings-in.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { standingRevision } from "../standing-revision.ts";

interface Ports {
  readonly store: Store;
  /** Answers faster of the newest revision, where there is one. */
  readonly datings: DatingReader | undefined;
}

/** What is asked for a piece: the features that were seen on it. */
export function datingsAskFor({ attribution, observations }: Piece): DatingsAsk {
  const { region, date } = attribution;
  const present = observations.filter(({ seen }) => seen === "present").map(({ feature }) => feature);
  return {
    features: [...new Set(present)],
    ...(region === undefined ? {} : { region }),
    claimed: claimedYears(date, ASSUMED),
    maxDepth: ASSUMED.maxDepth,
    steps: BUDGET.datings,
  };
}

/** Every way from what was seen on a piece to what dates it (E65), on a revision, the newest if none is named. */
export async function findDatings(
  ports: Ports,
  piece: Piece,
  revision?: RevisionNumber,
): Promise<Datings | Refusal> {
  const at = await standingRevision(ports, revision);
  if (isProblem(at)) return { refused: [at] };
  const refusal = await refuseUnfitPiece(ports, piece, at);
  return refusal ?? readDatings(ports, datingsAskFor(piece), at);
}

/** The same for an ask, which was checked before. */
export async function readDatings(
  { store, datings }: Ports,
  ask: DatingsAsk,
  at?: RevisionNumber,
): Promise<Datings> {
  const found = await datings?.datings(ask);
  if (found !== undefined && (at === undefined || found.revision === at)) return found;
  const regions = ask.region === undefined ? [] : [ask.region];
  return datingsIn(
    await store.neighbourhood({
      ...{ seeds: [...ask.features, ...regions], regions, maxDepth: ask.maxDepth },
      ...(at === undefined ? {} : { at }),
    }),
    ask,
  );
}
