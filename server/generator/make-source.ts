import { id, type SourceId } from "../domain/ids.ts";
import type { Source, SourceKind } from "../domain/source.ts";
import { partsOf } from "./make-term.ts";
import { READINGS, SOURCE_KINDS } from "./proportions.ts";
import { randomSourceOf } from "./random-source.ts";
import { draw } from "./weighted.ts";
import { lifeOf, pickFeature, pickTerm, regionId, termId, type World } from "./world.ts";

const CSL_TYPES: Readonly<Record<SourceKind, string>> = {
  ...{ book: "book", article: "article-journal", thesis: "thesis", patent: "patent", statute: "legislation" },
  ...{ standard: "report", "museum text": "webpage", "trade text": "post-weblog", "web page": "webpage" },
  "documented piece": "document",
};

export const sourceId = (number: number): SourceId => id(`source.made-up-${number}`);

/** A source that nobody wrote. */
export function makeSource(world: World, number: number, family: number): Source {
  const random = randomSourceOf(world.plan.seed, 7, number);
  const kind = draw(random, SOURCE_KINDS);
  const year = 1850 + random.below(175);
  const form = kind === "documented piece" ? pickTerm(random, world.plan, family, "form") : undefined;
  return {
    id: sourceId(number),
    kind: kind === "documented piece" && form === undefined ? "book" : kind,
    csl: {
      id: sourceId(number),
      type: CSL_TYPES[kind],
      title: `Made-up ${kind} ${number}, that nobody wrote`,
      author: [{ literal: "Nobody" }],
      issued: { "date-parts": [[year]] },
      ...(random.chance(0.6) ? { "container-title": `Made-up periodical ${random.below(500)}` } : {}),
      ...(random.chance(0.5) ? { page: `${1 + random.below(400)}` } : {}),
    },
    reading: draw(random, READINGS),
    ...(random.chance(0.3) ? { note: "Made up to measure with; there is no such text." } : {}),
    ...(form === undefined ? {} : { piece: pieceOf() }),
  };

  function pieceOf(): NonNullable<Source["piece"]> {
    const features = Array.from({ length: 3 + random.below(4) }, () =>
      pickFeature(random, world.plan, family),
    );
    const lives = features.map((feature) => lifeOf(world, feature));
    return {
      form: termId(form as NonNullable<typeof form>),
      region: regionId((lives[0] as (typeof lives)[number]).home),
      made: String(Math.max(...lives.map(({ first }) => first)) + random.below(20)),
      features: features.map((feature) => ({
        ...{ feature: termId(feature), part: random.pick(partsOf(world.plan, feature)) },
      })),
    };
  }
}
