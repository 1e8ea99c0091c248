import type { Choice } from "./components.ts";
import type { Relaxed } from "./relaxed.ts";
import type { Stance } from "./stances.ts";

/**
 * What is left of choices for sets that cost no more than `most`: by the bound, everything else costs more with any of what is left out
 * (fixing by reduced costs). `atLeast` is the bound of all choices together.
 */
export function fixed(
  choices: readonly Choice[],
  relaxed: Relaxed,
  atLeast: number,
  most: number,
): readonly Choice[] {
  if (most === Number.POSITIVE_INFINITY) return choices;
  const room = most - atLeast;
  const isTooMuch = (regret: number): boolean => regret > room + 0.5;
  return choices.map((choice) => {
    const least = relaxed.choice(choice, []);
    const stances = choice.stances.flatMap((stance): readonly Stance[] => {
      const own = relaxed.stance(stance, []) - least;
      if (isTooMuch(own)) return [];
      const needs = stance.needs.map((need) => {
        const cheapest = relaxed.need(need, []);
        const treatments = need.treatments.flatMap((treatment) => {
          const price = relaxed.treatment(need, treatment, []);
          if (isTooMuch(own + price - cheapest)) return [];
          const fee =
            price - Math.max(0, ...treatment.clauses.map((drops) => relaxed.clause(need, drops, [])));
          const clauses = treatment.clauses.map((drops) =>
            drops.filter((drop) => !isTooMuch(own + fee + relaxed.clause(need, [drop], []) - cheapest)),
          );
          return [{ item: treatment.item, clauses }];
        });
        return { sighting: need.sighting, treatments };
      });
      return [{ item: stance.item, needs }];
    });
    return { ...choice, stances };
  });
}
