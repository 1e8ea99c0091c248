import { id } from "../ids.ts";
import type { AssumedOdds, PlainStateOdds } from "./odds.ts";

const kind = (slug: string, original: number, later: number, reused: number) => ({
  kind: id<"term">(`part.${slug}`),
  odds: { original, later, reused } satisfies PlainStateOdds,
});

/**
 * The odds that are assumed until somebody changes them: one table, shown as assumed wherever it counts. The parts that wear and
 * break are the ones that get replaced; these are rounded judgements of the trade, not counts. Values of the four `wrong`,
 * of signs and of the curve: docs/method.md.
 */
export const ASSUMED_ODDS: AssumedOdds = {
  states: [
    kind("carcase", 0.95, 0.03, 0.02),
    kind("carcase-side", 0.95, 0.03, 0.02),
    kind("upper-case", 0.85, 0.05, 0.1),
    kind("lower-case", 0.9, 0.05, 0.05),
    kind("top", 0.8, 0.15, 0.05),
    kind("leaf", 0.85, 0.13, 0.02),
    kind("back", 0.85, 0.1, 0.05),
    kind("base", 0.75, 0.22, 0.03),
    kind("foot", 0.55, 0.43, 0.02),
    kind("leg", 0.85, 0.12, 0.03),
    kind("stretcher", 0.8, 0.18, 0.02),
    kind("rail", 0.9, 0.08, 0.02),
    kind("seat", 0.75, 0.23, 0.02),
    kind("drawer", 0.8, 0.17, 0.03),
    kind("drawer-runner", 0.5, 0.48, 0.02),
    kind("door", 0.85, 0.1, 0.05),
    kind("moulding", 0.75, 0.23, 0.02),
    kind("cornice", 0.7, 0.27, 0.03),
    kind("hardware", 0.6, 0.37, 0.03),
    kind("handle", 0.6, 0.37, 0.03),
    kind("escutcheon", 0.6, 0.37, 0.03),
    kind("lock", 0.65, 0.32, 0.03),
    kind("hinge", 0.65, 0.32, 0.03),
    kind("castor", 0.45, 0.53, 0.02),
    kind("fastener", 0.7, 0.28, 0.02),
    kind("veneer", 0.85, 0.14, 0.01),
    kind("carving", 0.85, 0.14, 0.01),
    kind("inlay", 0.85, 0.14, 0.01),
    kind("finish", 0.3, 0.69, 0.01),
    kind("upholstery", 0.15, 0.84, 0.01),
  ],
  otherwise: { original: 0.85, later: 0.12, reused: 0.03 },
  ofParts: [],
  reworked: 0.05,
  laterWork: 0.3,
  wrongClaim: { certain: 0.002, firm: 0.01, usual: 0.05, tentative: 0.2 },
  doubtful: 0.7,
  wrongFallback: 0.3,
  misread: { sure: 0.02, probable: 0.1, possible: 0.3 },
  detect: 0.8,
  prevalence: 0.3,
  baseRate: 0.05,
  leak: 0.005,
  lateSurvival: 0.02,
  reuseYears: 40,
  signs: { certain: [0.9, 0.009], firm: [0.6, 0.02], usual: [0.5, 0.05], tentative: [0.3, 0.1] },
  typical: { certain: 0.8, firm: 0.6, usual: 0.4, tentative: 0.25 },
  notTypical: 0.1,
  datePrior: "uniform",
  gridFrom: 1500,
  worlds: 3,
};
