import type { Piece } from "#server/domain/examination.ts";
import { type GraphPlan, termNumbers } from "#server/generator/graph-plan.ts";
import { claimId } from "#server/generator/make-claim-of.ts";
import { examinationId, makePiece } from "#server/generator/make-piece.ts";
import { makeTerm } from "#server/generator/make-term.ts";
import { type RandomSource, randomSourceOf } from "#server/generator/random-source.ts";
import { draw, type Weights } from "#server/generator/weighted.ts";
import { pickFeature, pickMeans, termId, worldOf } from "#server/generator/world.ts";
import { readPageOperations } from "./page-operations.ts";

/** What people do, of 100 requests. */
const MIX = {
  ...{ "a term's page": 25, "examining a piece": 20, "searching a term": 20, "a claim's page": 15 },
  ...{ "the list of pieces": 10, "a piece's page": 5, "changing a piece": 5 },
} as const satisfies Weights<string>;
export type Deed = keyof typeof MIX;

export interface Request {
  readonly deed: Deed;
  readonly query: string;
  readonly variables: object;
}

export interface Visitor {
  /** What is asked next. */
  next(): Request;
  /** Tells the answer, as a change names the version it was made on. */
  told(request: Request, data: unknown): void;
}

/** People at a made-up graph: each has a piece of its own to change, looks at what it likes, and types words it has seen. */
export function visitorsOf(plan: GraphPlan, pieces: number): (number: number) => Visitor {
  const world = worldOf(plan);
  const operation = readPageOperations();
  const queries: Readonly<Record<Deed, string>> = {
    "a term's page": operation("TermPage"),
    "examining a piece": operation("ExaminePiece"),
    "searching a term": operation("TermSearch"),
    "a claim's page": operation("ClaimPage"),
    "the list of pieces": operation("StartPage"),
    "a piece's page": operation("ExaminationPage"),
    "changing a piece": operation("ChangeExamination"),
  };
  return (number) => {
    const random = randomSourceOf(plan.seed, 11, number);
    const own = examinationId(number + 1);
    const { piece } = makePiece(world, number + 1);
    let version = 1;
    return {
      next: () => {
        const deed = draw(random, MIX);
        return { deed, query: queries[deed], variables: variablesOf(deed) };
      },
      told: ({ deed }, data) => {
        if (deed !== "changing a piece") return;
        const done = data as { changeExamination: { examination?: { version: number } } };
        version = done.changeExamination.examination?.version ?? version;
      },
    };

    function variablesOf(deed: Deed): object {
      switch (deed) {
        case "a term's page":
          return { id: someTerm(random), first: 50 };
        case "examining a piece":
          return { piece: inputOf(makePiece(world, 1 + random.below(100_000)).piece) };
        case "searching a term":
          return { words: typed(random), kinds: ["FEATURE"] };
        case "a claim's page":
          return { id: claimId(random.below(plan.claims)) };
        case "the list of pieces":
          return { first: 20 };
        case "a piece's page":
          return { id: examinationId(1 + random.below(pieces)) };
        case "changing a piece":
          return {
            id: own,
            expectedVersion: version,
            piece: inputOf({ ...piece, note: `Made up ${random.below(1e9)}.` }),
          };
      }
    }
  };

  /** Features mostly; now and then one of the means that everything is made with. */
  function someTerm(random: RandomSource): string {
    const family = random.below(plan.families);
    const means = random.chance(0.2)
      ? pickMeans(random, plan, family, random.pick(["tool", "material"]))
      : undefined;
    return termId(means ?? pickFeature(random, plan, family));
  }

  /** The beginning of a label, as it is typed. */
  function typed(random: RandomSource): string {
    const family = random.below(plan.families);
    const feature = pickFeature(random, plan, family);
    const { label } = makeTerm(world, feature, termNumbers(plan, family), family);
    return label.slice("made-up ".length).slice(0, 3 + random.below(12));
  }
}

/** A piece as the interface takes it. */
const inputOf = (piece: Piece): object => ({
  ...piece,
  observations: piece.observations.map((made) => ({
    ...made,
    ...{ seen: made.seen.toUpperCase(), sureness: made.sureness.toUpperCase() },
  })),
});
