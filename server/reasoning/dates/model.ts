import type { ClaimId, ObservationId, PartId, SourceId } from "../../domain/ids.ts";
import type { Place } from "../../domain/report.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { StateOdds } from "../../domain/weighing/odds.ts";
import type { Weight } from "../../domain/weighing/weights.ts";
import type { Year } from "../../domain/years.ts";
import type { Given } from "./right-odds.ts";

/** How probable what was seen is, for each year in which it can have been worked. */
export interface Factor {
  /** One observation, or several that one latent cause links. */
  readonly observations: readonly ObservationId[];
  readonly linkedBy?: NonNullable<Weight["linkedBy"]>;
  /** P(seen | worked in year u), by u - from. Absences count in it too. */
  readonly byYear: Float64Array;
}

/** How probable a sign is in each state of the part; no year speaks in it. */
export interface SignFactor {
  readonly observations: readonly ObservationId[];
  readonly linkedBy?: "cause";
  readonly byState: StateOdds;
}

/** Parts that share one state and one year: one part, or all that are together. */
export interface Group {
  readonly parts: readonly PartId[];
  readonly prior: StateOdds;
  readonly factors: readonly Factor[];
  readonly signs: readonly SignFactor[];
}

/** One place and one assignment of right and wrong to the claims that are tried; weights add up to 1. */
export interface Case {
  readonly place: Place;
  readonly weight: number;
  /** The claims that are right or wrong in it. */
  readonly given: Given;
  readonly groups: readonly Group[];
}

/**
 * The piece as a mixture (docs/method.md): one year of making, and for each group a state. The groups of all cases are the same
 * parts in the same order.
 */
export interface Model {
  readonly from: Year;
  /** Last year of the grid: that of the examination. */
  readonly to: Year;
  /** Prior of the year of making, by year - from; adds up to 1. */
  readonly prior: Float64Array;
  readonly laterWork: number;
  readonly reuseYears: number;
  readonly cases: readonly Case[];
  readonly assumedShapes: Dates["assumedShapes"];
  readonly tried: readonly (ClaimId | SourceId)[];
  readonly takenApart: readonly (ClaimId | SourceId)[];
  /** Every claim that a curve rests on, sorted. */
  readonly used: readonly ClaimId[];
}
