import type { PartId } from "../../../domain/ids.ts";
import type { ShiftLine } from "../../../domain/shift-words.ts";
import type { Shifts } from "../../../domain/shifts.ts";
import type { PartOdds } from "../../../domain/weighing/dates.ts";
import { capitalise, listInWords } from "../list-in-words.ts";
import { stateInBrief } from "./part-dates-in-words.ts";

/** The odds of the parts of one piece on two states of the graph. */
export interface OddsOnBothSides {
  readonly before: readonly PartOdds[];
  readonly now: readonly PartOdds[];
}

/** What each part most probably was and is, where the words for it are others; parts that are together in one line. */
export const stateShiftsInWords = (
  states: Shifts["states"],
  { before, now }: OddsOnBothSides,
  partOf: (part: PartId) => string,
): readonly ShiftLine[] =>
  states.flatMap(({ part }): ShiftLine[] => {
    const [was, is] = [before, now].map((odds) => odds.find(({ parts }) => parts[0] === part));
    if (was === undefined || is === undefined) return [];
    return [
      {
        ...{ kind: "state", says: capitalise(listInWords(is.parts.map(partOf))) },
        ...{ before: stateInBrief(was), now: stateInBrief(is) },
        odds: { before: was.odds, now: is.odds },
      },
    ];
  });
