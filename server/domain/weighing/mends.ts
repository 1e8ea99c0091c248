import type { Hardness } from "../claim.ts";
import type { ClaimId, ObservationId, PartId } from "../ids.ts";
import type { Place } from "../report.ts";
import type { Year, YearsJson } from "../years.ts";

/** One thing that is given up so that the attribution stands. */
export type GivenUp =
  /** The parts (one, or all that are together) are of later making, or come from an earlier piece. */
  | { readonly kind: "later" | "reused"; readonly parts: readonly PartId[] }
  /** What was seen is later work on a part that is as old as it should be. */
  | { readonly kind: "altered"; readonly observation: ObservationId }
  | { readonly kind: "misread"; readonly observation: ObservationId }
  | { readonly kind: "claim"; readonly claim: ClaimId }
  | { readonly kind: "rivals"; readonly claims: readonly ClaimId[] }
  | { readonly kind: "assumption"; readonly assumption: string }
  | { readonly kind: "not-separate"; readonly parts: readonly [PartId, PartId] };

/** A set of things to give up; nothing in it can be left out. */
export interface Mend {
  readonly givenUp: readonly GivenUp[];
  /** In thousandths of a decade of odds, summed: round(1000 log10(P(ok) / P(not ok))) of each. */
  readonly price: number;
  /** Year of making under which it holds; the earliest of the cheapest. */
  readonly year: Year;
  /** The place of the piece under which it holds. */
  readonly place: Place;
}

/** One way to save one part (or the group it is together with): all of `givenUp`. */
export interface MendOption {
  readonly givenUp: readonly GivenUp[];
  readonly price: number;
  /** Claims in it that save other parts too are paid once. */
  readonly shared: readonly ClaimId[];
}

/** What would have to be true for the attribution to stand. */
export interface Mends {
  /** physical: for it to be possible; practice: for nothing in it to be unusual as well. */
  readonly level: Hardness;
  /** Absent if nothing was found within the budget; nothing given up and price 0 if nothing is at odds. */
  readonly best?: Mend;
  /** Whether `best` is known to be the cheapest there is; else nothing is cheaper than `lowerBound`. */
  readonly proved: boolean;
  readonly lowerBound: number;
  /** For each part, or group of parts together, one of these, the cheapest first; an empty `parts` is the claim about the whole. */
  readonly perPart: readonly { readonly parts: readonly PartId[]; readonly options: readonly MendOption[] }[];
  /** Whole mends, the cheapest first. */
  readonly listed: readonly Mend[];
  /** More there are than are listed. */
  readonly more: boolean;
  /** The cheapest story if the date may be another. */
  readonly movedDate?: { readonly mend: Mend; readonly years: YearsJson };
}
