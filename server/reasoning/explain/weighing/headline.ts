import type { Dates, PartDates } from "../../../domain/weighing/dates.ts";
import { likeliestState } from "../../../domain/weighing/likely-state.ts";
import type { Sensitivity, Weights } from "../../../domain/weighing/weights.ts";
import { capitalise } from "../list-in-words.ts";
import { probabilityInWords, rangeInWords } from "./probability-in-words.ts";
import type { WeighingReader } from "./weighing-reader.ts";
import { weightInWords } from "./weight-in-words.ts";

/** Within half a decade of odds the evidence does not discriminate. */
const DISCRIMINATES = 0.5;
const REASONS = 3;

/**
 * The conclusion as a sentence or two: the claimed years with their range, and the part that matters most. No score, and
 * nothing but that while nothing is recorded.
 */
export function headlineOfWeighing(
  dates: Dates,
  sensitivity: Sensitivity | undefined,
  reader: WeighingReader,
): string {
  if (!reader.isAnythingSeen)
    return `Nothing is recorded, so that nothing speaks for ${reader.claimed} or against it.`;
  const { log10, posterior } = dates.claimed;
  const range = sensitivity ? ` (${rangeInWords(sensitivity.claimed)} under other assumptions)` : "";
  const about = `probability ${posterior < 0.01 || posterior > 0.99 ? "" : "about "}${probabilityInWords(posterior)}${range}`;
  const part = mostInDoubt(dates.parts, reader, sensitivity);
  if (log10 === null)
    return `What was seen of ${reader.claimed} lies beyond what the model can weigh.${part}`;
  if (Math.abs(log10) < DISCRIMINATES)
    return `The evidence does not discriminate between ${reader.claimed} and other years: ${about}.${part}`;
  const speaks = log10 > 0 ? "for" : "against";
  return `What was seen speaks ${speaks} ${reader.claimed}: ${about}, before anything was seen ${probabilityInWords(dates.claimed.prior)}.${part}`;
}

/** The part that is least likely to be of the first making, if that is more likely than not. */
function mostInDoubt(
  parts: readonly PartDates[],
  reader: WeighingReader,
  sensitivity: Sensitivity | undefined,
): string {
  const told = parts.filter(({ odds, prior }) => Math.abs(odds.original - prior.original) >= 0.005);
  const [most] = told
    .filter(({ odds }) => likeliestState(odds) !== "original")
    .sort((a, b) => a.odds.original - b.odds.original);
  if (most === undefined) return "";
  const range = sensitivity?.original.find(({ part }) => part === most.parts[0])?.range;
  const original = probabilityInWords(most.odds.original);
  return ` ${capitalise(reader.partsOf(most.parts))} ${reader.isPlural(most.parts) ? "are" : "is"} of the first making with probability ${original}${range ? ` (${rangeInWords(range)})` : ""}.`;
}

/** The things seen that weigh most, at most three; those that say next to nothing are left out. */
export const reasonsOfWeighing = ({ steps }: Weights, reader: WeighingReader): readonly string[] =>
  steps
    .filter(({ leaveOneOut }) => leaveOneOut === null || Math.abs(leaveOneOut) >= 0.05)
    .slice(0, REASONS)
    .map(({ observations, leaveOneOut, word }) => {
      const seen = observations.map(reader.seenOf);
      const what = seen.length > 1 ? `${seen.join("; ")} (taken together)` : (seen[0] ?? "");
      return `${capitalise(what)} ${weightInWords(leaveOneOut, word, "the claim")}.`;
    });
