import type { Stage } from "#server/domain/weighing/weighing.ts";

/** Stages asked for in one go. */
export interface Step {
  readonly asks: readonly Stage[];
  /** Stages that are new with it; others are asked for once more so that the words can name ranges. */
  readonly gives: readonly Stage[];
}

/** The weighing in the order in which it is worked out: what is wanted first comes first. */
export const STEPS: readonly Step[] = [
  {
    asks: ["mends", "origins", "dates", "weights"],
    gives: ["mends", "origins", "dates", "weights"],
  },
  { asks: ["dates", "weights", "sensitivity"], gives: ["sensitivity"] },
  { asks: ["rivals"], gives: ["rivals"] },
  { asks: ["looks"], gives: ["looks"] },
];

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  mends: "what would have to be true",
  origins: "how many pieces are in it at least",
  dates: "years and states of the parts",
  weights: "what each thing seen weighs",
  sensitivity: "how far it depends on what is assumed",
  rivals: "the rival stories",
  looks: "what to look at next",
};

/** Stages of the steps from `step` on, in words. */
export const stagesFrom = (step: number): readonly string[] =>
  STEPS.slice(step).flatMap(({ gives }) => gives.map((stage) => STAGE_WORDS[stage]));

/** What a step works out, as the object of "working out". */
export const sayStep = (step: number): string => {
  const all = (STEPS[step]?.gives ?? []).map((stage) => STAGE_WORDS[stage]);
  return all.length < 2 ? (all[0] ?? "") : `${all.slice(0, -1).join(", ")} and ${all.at(-1)}`;
};
