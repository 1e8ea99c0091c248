import type { Numbers } from "./metrics.ts";

type About = Pick<Numbers, "name" | "help" | "unit">;

/** A gauge that is one number. */
export const oneGauge = (about: About, value: number): Numbers => ({
  kind: "gauge",
  ...about,
  samples: [{ value }],
});

/** A counter that is one number. */
export const oneCounter = (about: About, value: number): Numbers => ({
  kind: "counter",
  ...about,
  samples: [{ value }],
});
