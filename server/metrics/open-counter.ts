import type { Labels, Numbers } from "../ports/metrics.ts";

export interface Counter {
  add(labels?: Labels, by?: number): void;
  tell(): Numbers;
}

/** A number that only grows, one for each set of labels it is given. */
export function openCounter(about: Pick<Numbers, "name" | "help" | "unit">): Counter {
  const counts = new Map<string, { readonly labels: Labels; value: number }>();
  return {
    add: (labels = {}, by = 1) => {
      const key = JSON.stringify(Object.values(labels));
      const count = counts.get(key);
      if (count) count.value += by;
      else counts.set(key, { labels, value: by });
    },
    tell: () => ({ ...about, kind: "counter", samples: [...counts.values()].map((each) => ({ ...each })) }),
  };
}
