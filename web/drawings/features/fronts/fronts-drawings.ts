import type { Drawing } from "../mark.ts";
import { birdcage, blockFront, bombeCase, bowFront, oxbowFront, serpentineFront } from "./plans.ts";

/** Drawings of fronts, by key. */
export const FRONTS_DRAWINGS = {
  "serpentine-front": serpentineFront,
  "oxbow-front": oxbowFront,
  "bow-front": bowFront,
  "block-front": blockFront,
  "bombe-case": bombeCase,
  birdcage: birdcage,
} as const satisfies Readonly<Record<string, Drawing>>;
