import type { Span } from "../../domain/years.ts";
import type { Posterior } from "../dates/posterior.ts";

/**
 * Least and greatest probability of the claimed years if a share `epsilon` of the prior may lie on any years whatever (Berger &
 * Berliner 1986, epsilon-contamination by any prior).
 */
export function contaminated(
  { model, years }: Posterior,
  claimed: Span,
  epsilon: number,
): readonly [number, number] {
  let [inside, all, largestInside, largestOutside] = [0, 0, 0, 0];
  for (let t = 0; t < years.length; t++) {
    const prior = model.prior[t] as number;
    const share = years[t] as number;
    all += share;
    // The likelihood but for a constant that all of it shares.
    const likelihood = prior > 0 ? share / prior : 0;
    const isClaimed = model.from + t >= claimed[0] && model.from + t <= claimed[1];
    if (isClaimed) {
      inside += share;
      largestInside = Math.max(largestInside, likelihood);
    } else largestOutside = Math.max(largestOutside, likelihood);
  }
  const kept = (1 - epsilon) * inside;
  const rest = (1 - epsilon) * all;
  const least = kept / (rest + epsilon * largestOutside);
  const greatest = (kept + epsilon * largestInside) / (rest + epsilon * largestInside);
  return [least, greatest];
}
