import { PAD_CENTURY, PAD_YEAR } from "./pad-for.ts";
import type { Assumptions } from "./report.ts";

/** The numbers that the engine assumes rather than cites. Each is printed in the report, and may be changed for one examination. */
export const ASSUMED: Assumptions = {
  padYear: PAD_YEAR,
  padCentury: PAD_CENTURY,
  maxDepth: 8,
  pathsListed: 12,
};

/** Budgets of the search, in steps and never in time. Where one is met, the report names what was left (`too-many-proofs`, `too-many-rule-outs`). */
export const BUDGET = {
  /** Irredundant proofs kept of one term at one place. */
  proofs: 64,
  /** Rule-outs listed. */
  ruleOuts: 300,
  /** Sets that a search for clashes of three or more asks of, over all places of a piece. */
  asked: 1000,
  /** Decisions it takes at one place in choosing them. */
  decisions: 50_000,
  /** Clashes of three or more put together, over all places. */
  clashes: 10_000,
  /** Choices in dividing the parts among origins. */
  grouped: 100_000,
  /** Terms that are come to in listing the ways to dates. */
  datings: 2_000,
} as const;
