import type { Piece } from "../../../domain/examination.ts";
import type { Stage, Weighing } from "../../../domain/weighing/weighing.ts";
import type { WeighingWords } from "../../../domain/weighing/weighing-words.ts";
import { weightWord } from "../../weights/weight-word.ts";
import { capitalise } from "../list-in-words.ts";
import { headlineOfWeighing, reasonsOfWeighing } from "./headline.ts";
import { chosenInWords, looksInWords } from "./looks-in-words.ts";
import { mendsInWords } from "./mends-in-words.ts";
import { originsInWords } from "./origins-in-words.ts";
import { partDatesInWords, wholeInWords } from "./part-dates-in-words.ts";
import { rivalsInWords, rivalsTogetherInWords } from "./rivals-in-words.ts";
import { variedInWords } from "./varied-in-words.ts";
import { readWeighing, type WeighingNames, type WeighingReader } from "./weighing-reader.ts";
import { weightInBrief, weightInWords } from "./weight-in-words.ts";

const STAGE: Readonly<Record<Stage, string>> = {
  mends: "what would have to be true",
  origins: "how many pieces it is made of at least",
  dates: "the years and the states of the parts",
  weights: "what each thing seen weighs",
  sensitivity: "how far the answer depends on what is assumed",
  rivals: "the rival stories",
  looks: "what to look at next",
};

/**
 * A weighing in sentences. Everything said follows from the weighing alone; `claimed` is the claimed years as a phrase. Sentences on
 * probabilities stand only in this folder.
 */
export function weighingInWords(
  weighing: Weighing,
  piece: Piece,
  claimed: string,
  names: WeighingNames,
): WeighingWords {
  const reader = readWeighing(weighing, piece, claimed, names);
  const { mends, origins, dates, weights, sensitivity, rivals, looks } = weighing;
  return {
    ...(mends ? { mends: [mends.possible, mends.usual].map((each) => mendsInWords(each, reader)) } : {}),
    ...(origins ? { origins: originsInWords(origins, reader) } : {}),
    ...(dates ? { headline: headlineOfWeighing(dates, sensitivity, reader) } : {}),
    ...(dates ? { whole: wholeInWords(dates, reader) } : {}),
    ...(dates ? { parts: partDatesInWords(dates.parts, reader) } : {}),
    ...(weights ? { reasons: reasonsOfWeighing(weights, reader) } : {}),
    ...(weights
      ? {
          weights: weights.steps.map(({ observations, leaveOneOut, word }) => ({
            observations,
            says: `${capitalise(observations.map(reader.seenOf).join("; "))} ${weightInWords(leaveOneOut, word, "the claim")}.`,
            seen: capitalise(observations.map(reader.seenOf).join("; ")),
            brief: weightInBrief(leaveOneOut, word),
          })),
          weightsTogether: `Everything seen, taken together, ${weightInWords(weights.total, weightWord(weights.total ?? Number.POSITIVE_INFINITY), claimed)}.`,
        }
      : {}),
    ...(sensitivity
      ? { dependsOn: sensitivity.dependsOn.map((what) => variedInWords(what, reader.nameOfSource)) }
      : {}),
    ...(rivals ? toldOf(rivals, reader) : {}),
    ...(looks ? { looks: looksInWords(looks, reader), looksTogether: chosenInWords(looks) } : {}),
    missing: weighing.missing.map(
      ({ stage, why }) =>
        `Not worked out: ${STAGE[stage]} (${why === "stopped" ? "it was stopped" : "it would have taken too long"}).`,
    ),
  };
}

function toldOf(
  rivals: NonNullable<Weighing["rivals"]>,
  reader: WeighingReader,
): Pick<WeighingWords, "rivals" | "rivalsTogether"> {
  const said = rivalsInWords(rivals, reader);
  return { rivals: said, rivalsTogether: rivalsTogetherInWords(rivals, said) };
}
