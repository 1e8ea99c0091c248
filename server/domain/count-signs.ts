import type { Sign } from "./report.ts";

/** How many signs there are on the parts of a piece, those of one cause on one part counted once. */
export const countSigns = (
  signs: readonly Pick<Sign, "part" | "cause" | "observation" | "claim">[],
): number =>
  new Set(
    signs.map(({ part, cause, observation, claim }) =>
      cause === undefined ? `${observation} ${claim}` : `${part} ${cause}`,
    ),
  ).size;
