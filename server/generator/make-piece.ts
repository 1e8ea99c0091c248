import type { Examination, Observation, Part, Piece, Sureness } from "../domain/examination.ts";
import { type ExaminationId, id, type ObservationId, type PartId, type TermId } from "../domain/ids.ts";
import { partsOf } from "./make-term.ts";
import { type RandomSource, randomSourceOf } from "./random-source.ts";
import { draw, type Weights } from "./weighted.ts";
import {
  homeOf,
  type Life,
  lifeOf,
  pickFeature,
  pickTerm,
  regionId,
  type TermRef,
  termId,
  type World,
} from "./world.ts";

/** How the observations of the demonstration pieces are made, counted. */
const SEEN: Weights<`${Observation["seen"]} ${Sureness}`> = {
  ...{
    "present sure": 49,
    "absent sure": 19,
    "present probable": 16,
    "unseen sure": 5,
    "absent probable": 2,
  },
  "present possible": 2,
};
const PARTS = { least: 9, spread: 7 };
const OBSERVATIONS = { least: 20, spread: 20 };
const EXAMINED = 2026;
/** Of 100 things seen, those of any time whatever: what was put in later, or is a puzzle. */
const OUT_OF_TIME = 8;

/**
 * A piece that there never was, of one family: 9 to 15 parts and 20 to 39 things seen. Its maker worked where most of the
 * family comes from, at a time when nearly all that is seen on it was usual.
 */
export function makePiece(world: World, number: number): Pick<Examination, "id" | "piece"> {
  const { plan } = world;
  const random = randomSourceOf(plan.seed, 10, number);
  const family = random.below(plan.families);
  const form = pickTerm(random, plan, family, "form");
  const year = 1660 + random.below(230);
  const parts = somePartsOf(random, form === undefined ? [] : partsOf(plan, form));
  const early = year - random.below(20);
  return {
    id: examinationId(number),
    piece: {
      title: `Made-up piece ${number}`,
      invented: true,
      note: "Made up to measure with; there is no such object.",
      examined: EXAMINED,
      attribution: {
        date: `${early}/${year + random.below(20)}`,
        region: regionId(homeOf(world, family)),
        ...(form === undefined ? {} : { form: termId(form) }),
        ...attributed("style", 0.3),
        ...attributed("maker", 0.1),
      },
      parts,
      observations: Array.from({ length: OBSERVATIONS.least + random.below(OBSERVATIONS.spread) }, observe),
      together: [],
      separate: [],
    } satisfies Piece,
  };

  function attributed(kind: "style" | "maker", chance: number): Partial<Record<typeof kind, TermId>> {
    if (!random.chance(chance)) return {};
    const term = pickTerm(random, plan, family, kind);
    return term === undefined ? {} : { [kind]: termId(term) };
  }
  function observe(_: unknown, n: number): Observation {
    const feature = ofTheTime();
    const kinds = partsOf(plan, feature);
    const fitting = parts.filter(({ kind }) => kind !== undefined && kinds.includes(kind));
    const [seen, sureness] = draw(random, SEEN).split(" ") as [Observation["seen"], Sureness];
    return {
      id: id<"observation">(`o${n + 1}`) satisfies ObservationId,
      part: random.pick(fitting.length > 0 ? fitting : parts).id,
      ...{ feature: termId(feature), seen, sureness },
      ...(random.chance(0.4) ? { note: "Made up." } : {}),
    };
  }
  function ofTheTime(): TermRef {
    const isOf = ({ first, usual }: Life): boolean => first <= early && year <= usual;
    let feature = pickFeature(random, plan, family);
    if (random.below(100) >= OUT_OF_TIME)
      for (let tries = 0; tries < 60 && !isOf(lifeOf(world, feature)); tries++)
        feature = pickFeature(random, plan, family);
    return feature;
  }
}

export const examinationId = (number: number): ExaminationId =>
  id(`examination.made-up-${String(number).padStart(6, "0")}`);

function somePartsOf(random: RandomSource, kinds: readonly TermId[]): readonly Part[] {
  const partId = (n: number): PartId => id(`p${n}`);
  return Array.from({ length: PARTS.least + random.below(PARTS.spread) }, (_, n) => {
    const kind = kinds[n % Math.max(1, kinds.length)];
    return {
      ...{ id: partId(n), label: `Part ${n}` },
      ...(kind === undefined ? {} : { kind }),
      ...(n > 0 && random.chance(0.7) ? { within: partId(random.below(n)) } : {}),
    };
  });
}
