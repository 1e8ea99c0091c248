import { createContext, useContext } from "react";
import type { Hardness } from "#server/domain/claim.ts";
import type { PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import type { Stage } from "#server/domain/weighing/weighing.ts";
import { NOTHING_TOUCHED, type Story } from "./tell-story.ts";
import type { WeighingRun } from "./use-weighing.ts";
import type { Weighed } from "./weighed.ts";

/** What was weighed, for every part of the page that tells of it. Follows a change at leisure: the strips are painted first. */
export interface WeighedDesk {
  /** The same object as long as nothing new is known; whether it is old is known apart. */
  readonly weighed: Pick<Weighed, "weighing" | "words" | "claims" | "terms">;
  /** What is assumed of a part as long as nothing is chosen, where an answer has told. */
  readonly assumedOf: (part: PartId) => PlainStateOdds | undefined;
  /** Opens the field that records an answer on a part. */
  readonly onRecord: (part: PartId, feature: TermId, label: string) => void;
}

/** What is assumed, at once as it is moved. */
export interface OddsDesk {
  /** What is assumed of this piece in place of the usual numbers: what is tried, else what is kept. */
  readonly odds: ChosenOdds;
  /** Tried, but not kept with the piece. */
  readonly isTrial: boolean;
  readonly tryOdds: (odds: ChosenOdds) => void;
  /** Goes back to what is kept. */
  readonly dropTrial: () => void;
  readonly keepTrial: () => void;
}

/** Which story is told of what would have to be true. */
export interface StoryDesk {
  readonly level: Hardness;
  readonly setLevel: (level: Hardness) => void;
  /** Undefined until it is worked out. */
  readonly story: Story | undefined;
  readonly choose: (row: string, option: string) => void;
}

const WeighedContext = createContext<WeighedDesk | undefined>(undefined);
const OldContext = createContext<ReadonlySet<Stage>>(new Set());
const RunContext = createContext<WeighingRun | undefined>(undefined);
const OddsContext = createContext<OddsDesk | undefined>(undefined);
const StoryContext = createContext<StoryDesk | undefined>(undefined);
export const WeighedProvider = WeighedContext.Provider;
/** Stages of which what is shown is of the piece, or of assumptions, as they were before. */
export const OldProvider = OldContext.Provider;
export const RunProvider = RunContext.Provider;
export const OddsProvider = OddsContext.Provider;
export const StoryProvider = StoryContext.Provider;

function useGiven<Given>(given: Given | undefined): Given {
  if (given === undefined) throw new Error("This part of the page stands outside a weighing");
  return given;
}

export const useWeighed = (): WeighedDesk => useGiven(useContext(WeighedContext));
export const useIsOld = (stage: Stage): boolean => useContext(OldContext).has(stage);
/** How far the weighing is. */
export const useRun = (): WeighingRun => useGiven(useContext(RunContext));
export const useOdds = (): OddsDesk => useGiven(useContext(OddsContext));
export const useStory = (): StoryDesk => useGiven(useContext(StoryContext));
/** What the chosen story touches; nothing before there is one. */
export const useTouched = (): Story["touched"] => useStory().story?.touched ?? NOTHING_TOUCHED;
