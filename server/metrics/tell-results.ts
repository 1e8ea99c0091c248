import type { Tell } from "../ports/metrics.ts";

/** How often a kept answer served again. */
export const tellResults =
  (counts: { readonly hits: number; readonly misses: number }): Tell =>
  () => [
    {
      kind: "counter",
      name: "scribeline_kept_answers",
      help: "Reports and weighings that were asked for: kept from before (hit), or worked out (miss).",
      samples: [
        { labels: { outcome: "hit" }, value: counts.hits },
        { labels: { outcome: "miss" }, value: counts.misses },
      ],
    },
  ];
