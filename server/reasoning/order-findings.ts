import { compareText, firstDifference } from "../domain/compare.ts";
import type { Span, Years } from "../domain/years.ts";
import type { Found } from "./find.ts";
import { compareWeights } from "./order.ts";

/** The weightiest finding first (E23): in the set of its hardness, ids last. */
export const orderFindings = (found: readonly Found[], claimed: Span): readonly Found[] =>
  [...found].sort((a, b) =>
    firstDifference(compareWeights(weigh(a), weigh(b), claimed), compareText(a.finding.id, b.finding.id)),
  );

const weigh = ({ finding, sets }: Found) => ({
  label: finding.label,
  hardness: finding.hardness,
  years: yearsOf({ finding, sets }),
});

const yearsOf = ({ finding, sets }: Pick<Found, "finding" | "sets">): Years =>
  finding.hardness === "physical" ? sets.possible.outer : sets.usual.outer;
