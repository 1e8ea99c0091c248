import type { Drawing } from "../mark.ts";
import { diamondPointPanel, joinedCase, nailedBack, panelledBack } from "./backs.ts";
import { flutedQuarterColumns, scrollPediment, threeLongDrawers, twoOverThree } from "./plans-of-drawers.ts";

/** Drawings of cases, by key. */
export const CASES_DRAWINGS = {
  "nailed-back": nailedBack,
  "panelled-back": panelledBack,
  "joined-case": joinedCase,
  "diamond-point-panel": diamondPointPanel,
  "two-over-three": twoOverThree,
  "three-long-drawers": threeLongDrawers,
  "fluted-quarter-columns": flutedQuarterColumns,
  "scroll-pediment": scrollPediment,
} as const satisfies Readonly<Record<string, Drawing>>;
