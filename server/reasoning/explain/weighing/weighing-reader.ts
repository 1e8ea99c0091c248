import type { Observation, Piece } from "../../../domain/examination.ts";
import type { ObservationId, PartId, SourceId, TermId } from "../../../domain/ids.ts";
import type { Weighing } from "../../../domain/weighing/weighing.ts";
import { decapitalise, listInWords } from "../list-in-words.ts";
import type { Names } from "../report-reader.ts";

/** What the words of a weighing are made from. */
export interface WeighingReader extends Names {
  readonly weighing: Weighing;
  /** "1765 to 1775", or the date as it was given. */
  readonly claimed: string;
  /** False while no thing is recorded on any part. */
  readonly isAnythingSeen: boolean;
  /** "the left leaf and the right leaf". */
  readonly partsOf: (parts: readonly PartId[]) => string;
  readonly isPlural: (parts: readonly PartId[]) => boolean;
  /** "circular-saw marks on the back"; with "no ..." where it was looked for and is absent. */
  readonly seenOf: (observation: ObservationId) => string;
  readonly nameOfSource: (source: SourceId) => string;
  readonly termOf: (term: TermId) => string;
}

export interface WeighingNames extends Names {
  readonly nameOfSource: (source: SourceId) => string;
}

/** Joins a weighing, its piece and the names of what both point to. */
export function readWeighing(
  weighing: Weighing,
  piece: Piece,
  claimed: string,
  names: WeighingNames,
): WeighingReader {
  const labels = new Map(piece.parts.map(({ id, label }) => [id, decapitalise(label)]));
  const seen = new Map<ObservationId, Observation>(piece.observations.map((each) => [each.id, each]));
  const partOf = (part: PartId): string => labels.get(part) ?? part;
  return {
    ...names,
    ...{ weighing, claimed, termOf: names.labelOf, isAnythingSeen: piece.observations.length > 0 },
    partsOf: (parts) => listInWords(parts.map((part) => `the ${partOf(part)}`)),
    isPlural: (parts) => parts.length > 1 || parts.some((part) => /([^s]s|feet)$/.test(headOf(partOf(part)))),
    seenOf: (observation) => {
      const made = seen.get(observation);
      if (made === undefined) return observation;
      const what = `${names.labelOf(made.feature)} on the ${partOf(made.part)}`;
      return made.seen === "absent" ? `no ${what}` : what;
    },
  };
}

/** The words that a label turns on: "bottoms" of "bottoms of the lower drawers". */
const headOf = (label: string): string => label.split(/ (?:of|on|in|with|under|behind|at) /, 1)[0] ?? label;
