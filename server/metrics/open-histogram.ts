import type { Distributions, Labels } from "../ports/metrics.ts";

/** Seconds: from an answer out of memory to a request that is given up. */
export const SECONDS: readonly number[] = [
  0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 20,
];

export interface Histogram {
  take(value: number, labels?: Labels): void;
  tell(): Distributions;
}

/** How often something took how much, one for each set of labels it is given. */
export function openHistogram(
  about: Pick<Distributions, "name" | "help" | "unit">,
  bounds: readonly number[] = SECONDS,
): Histogram {
  const all = new Map<string, { readonly labels: Labels; readonly counts: number[]; sum: number }>();
  return {
    take: (value, labels = {}) => {
      const key = JSON.stringify(Object.values(labels));
      let one = all.get(key);
      if (one === undefined) {
        one = { labels, counts: Array.from({ length: bounds.length + 1 }, () => 0), sum: 0 };
        all.set(key, one);
      }
      const at = bounds.findIndex((bound) => value <= bound);
      const slot = at < 0 ? bounds.length : at;
      one.counts[slot] = (one.counts[slot] ?? 0) + 1;
      one.sum += value;
    },
    tell: () => ({
      ...about,
      kind: "histogram",
      bounds,
      samples: [...all.values()].map(({ labels, counts, sum }) => ({ labels, counts: [...counts], sum })),
    }),
  };
}
