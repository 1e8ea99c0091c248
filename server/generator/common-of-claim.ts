import type { Citation, Citations } from "../domain/claim.ts";
import type { ClaimId } from "../domain/ids.ts";
import { howMany, sourceNumbers } from "./graph-plan.ts";
import { sourceId } from "./make-source.ts";
import { BASES, CITATIONS, CLAIM_NOTES, LENGTHS, NOTED, STATUSES, STRENGTHS } from "./proportions.ts";
import type { RandomSource } from "./random-source.ts";
import { draw, drawBetween } from "./weighted.ts";
import { textOf } from "./words.ts";
import type { World } from "./world.ts";

/** One claim to be made. */
export interface Wanted {
  readonly world: World;
  readonly random: RandomSource;
  readonly family: number;
  readonly id: ClaimId;
}

/** What claims of all relations have: id, strength, status, note, citations. */
export function commonOf({ world, random, family, id }: Wanted) {
  const numbers = sourceNumbers(world.plan, family);
  const cited = Array.from({ length: Number(draw(random, CITATIONS)) }, (): Citation => {
    const basis = draw(random, BASES);
    if (basis === "published" && howMany(numbers) > 0)
      return {
        ...{ basis, source: sourceId(numbers.first + random.skewed(howMany(numbers))) },
        locator: textOf(random, drawBetween(random, LENGTHS.locator), `p. ${1 + random.below(500)}`),
      };
    const note = textOf(random, drawBetween(random, LENGTHS.citationNote));
    return {
      ...{ basis: basis === "published" ? "common practice" : basis },
      ...(random.below(100) < NOTED ? { note } : {}),
    };
  });
  return {
    ...{ id, strength: draw(random, STRENGTHS), status: draw(random, STATUSES) },
    ...(random.below(100) < CLAIM_NOTES
      ? { note: textOf(random, drawBetween(random, LENGTHS.claimNote)) }
      : {}),
    citations: cited as unknown as Citations,
  };
}
