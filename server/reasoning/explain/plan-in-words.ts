import type { PlanAnswer, PlanItem } from "../../domain/weighing/looks.ts";
import { weightWord } from "../weights/weight-word.ts";
import { STATE_IN_WORDS } from "./claim-in-words.ts";
import { HOW_WEIGHTY } from "./weighing/weight-in-words.ts";

/** What each answer to an item would do, each as a sentence. */
export interface AnswersInWords {
  readonly ifSeen: string;
  readonly ifAbsent: string;
}

/** What each answer would do. `claimed` is the claimed date as a phrase. */
export const answersInWords = ({ ifSeen, ifAbsent }: PlanItem, claimed: string): AnswersInWords => ({
  ifSeen: answerInWords(ifSeen, claimed),
  ifAbsent: answerInWords(ifAbsent, claimed),
});

function answerInWords({ claim, log10, state }: PlanAnswer, claimed: string): string {
  const says =
    claim === "rules out"
      ? [`rules ${claimed} out for the part`]
      : claim === "says nothing" || log10 === null
        ? []
        : [`speaks ${HOW_WEIGHTY[weightWord(log10)]} ${claim} ${claimed}`];
  const points = state === undefined ? [] : [`speaks for ${STATE_IN_WORDS[state]}`];
  const all = [...says, ...points];
  return all.length === 0 ? "says next to nothing by itself" : all.join("; ");
}
