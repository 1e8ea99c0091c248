import { PAD_CENTURY, PAD_YEAR } from "./pad-for.ts";
import type { Assumptions } from "./report.ts";

/** The numbers that the engine assumes rather than cites. Each is printed in the report, and may be changed for one examination. */
export const ASSUMED: Assumptions = {
  padYear: PAD_YEAR,
  padCentury: PAD_CENTURY,
  maxDepth: 8,
  pathsListed: 12,
};

/** Budgets of the search, in steps and never in time. Where one is met, the report names what was left (`too-many-proofs`). */
export const BUDGET = {
  /** Irredundant proofs kept of one term at one place. */
  proofs: 64,
  /** Rule-outs listed. */
  ruleOuts: 300,
} as const;
