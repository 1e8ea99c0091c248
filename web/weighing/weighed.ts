import type { Stage, Weighing } from "#server/domain/weighing/weighing.ts";
import type { WeighingWords } from "#server/domain/weighing/weighing-words.ts";
import type { CitedClaimFragment } from "#web/strips/CitedClaim.graphql.ts";
import type { LookedForFragment } from "./WeighPiece.graphql.ts";
import { STEPS, type Step } from "./weighing-steps.ts";

/** What is known of a piece so far: stage by stage, each with whether it is of the piece as it now stands. */
export interface Weighed {
  /** What was weighed: of this the fresh stages are. */
  readonly key: string;
  readonly weighing: Partial<Weighing>;
  readonly words: Partial<WeighingWords>;
  /** Stages answered for the piece and the assumptions as they are; what else is shown is of before. */
  readonly fresh: ReadonlySet<Stage>;
  /** Stages that the server gave up, by its own words. */
  readonly missing: readonly string[];
  readonly claims: ReadonlyMap<string, CitedClaimFragment>;
  /** What is to be looked for, with how. */
  readonly terms: ReadonlyMap<string, LookedForFragment>;
}

export const NOTHING_WEIGHED: Weighed = {
  key: "",
  weighing: {},
  words: {},
  fresh: new Set(),
  missing: [],
  claims: new Map(),
  terms: new Map(),
};

/** Everything is kept, and nothing of it is of the piece as it now stands. */
export const withNothingFresh = (weighed: Weighed, key: string): Weighed => ({
  ...weighed,
  key,
  fresh: new Set(),
  missing: [],
});

interface Answer {
  readonly weighing: Weighing;
  readonly words: WeighingWords;
  readonly claims: readonly CitedClaimFragment[];
  readonly terms?: readonly LookedForFragment[];
}

const stagesIn = (weighing: Weighing, step: Step): readonly Stage[] =>
  step.asks.filter((stage) => weighing[stage] !== undefined);

/** Words that name ranges come with the step that knows them; those of the first step must not take their place meanwhile. */
const WAIT_FOR_RANGES: readonly (keyof WeighingWords)[] = ["headline", "parts"];

/** What is known once a step is through. */
export function withAnswer(
  weighed: Weighed,
  step: Step,
  { weighing, words, claims, terms = [] }: Answer,
): Weighed {
  const { missing, ...said } = words;
  const isFirst = step === STEPS[0];
  const early = isFirst ? WAIT_FOR_RANGES.filter((key) => weighed.words[key] !== undefined) : [];
  const taken = Object.fromEntries(
    Object.entries(said).filter(([key]) => !early.includes(key as keyof WeighingWords)),
  );
  const lost = step.gives.some((stage) => weighing[stage] === undefined);
  return {
    key: weighed.key,
    weighing: { ...weighed.weighing, ...weighing },
    words: { ...weighed.words, ...taken },
    fresh: new Set([...weighed.fresh, ...stagesIn(weighing, step)]),
    missing: lost ? [...weighed.missing, ...missing] : weighed.missing,
    claims: new Map([...weighed.claims, ...claims.map((claim) => [claim.id, claim] as const)]),
    terms: new Map([...weighed.terms, ...terms.map((term) => [term.id, term] as const)]),
  };
}
