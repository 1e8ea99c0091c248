import { createContext, useContext } from "react";
import type { Hardness } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import type { Stage } from "#server/domain/weighing/weighing.ts";
import { NOTHING_TOUCHED, type Story } from "./tell-story.ts";
import type { WeighingRun } from "./use-weighing.ts";

/** What every part of the screens of the weighing works on. */
export interface WeighingDesk extends WeighingRun {
  readonly piece: Piece;
  /** True where what is shown of a stage is of the piece, or of assumptions, as they were before. */
  readonly isOld: (stage: Stage) => boolean;
  /** What is assumed of this piece in place of the usual numbers: what is tried, else what is kept. */
  readonly odds: ChosenOdds;
  /** Tried, but not kept with the piece. */
  readonly isTrial: boolean;
  readonly tryOdds: (odds: ChosenOdds) => void;
  /** Goes back to what is kept. */
  readonly dropTrial: () => void;
  readonly keepTrial: () => void;
  /** What is assumed of a part as long as nothing is chosen, where an answer has told. */
  readonly assumedOf: (part: PartId) => PlainStateOdds | undefined;
  /** Opens the field that records an answer on a part. */
  readonly onRecord: (part: PartId, feature: TermId, label: string) => void;
}

/** Which story is told of what would have to be true. */
export interface StoryDesk {
  readonly level: Hardness;
  readonly setLevel: (level: Hardness) => void;
  /** Undefined until it is worked out. */
  readonly story: Story | undefined;
  readonly choose: (row: string, option: string) => void;
}

const WeighingContext = createContext<WeighingDesk | undefined>(undefined);
const StoryContext = createContext<StoryDesk | undefined>(undefined);
export const WeighingProvider = WeighingContext.Provider;
export const StoryProvider = StoryContext.Provider;

function useGiven<Given>(given: Given | undefined): Given {
  if (given === undefined) throw new Error("This part of the page stands outside a weighing");
  return given;
}

export const useWeighed = (): WeighingDesk => useGiven(useContext(WeighingContext));
export const useStory = (): StoryDesk => useGiven(useContext(StoryContext));
/** What the chosen story touches; nothing before there is one. */
export const useTouched = (): Story["touched"] => useStory().story?.touched ?? NOTHING_TOUCHED;
