import type { PartId } from "../ids.ts";

/** The fewest separate pieces that the parts can come from: a lower bound, never a count. */
export interface OriginCount {
  readonly atLeast: number;
  /** One way to divide the parts that needs no more. */
  readonly groups: readonly (readonly PartId[])[];
  /**
   * Parts no two of which can share an origin; as many as `atLeast` where pairs alone force it. Of parts that are together the first. The
   * first ten of the largest such sets; none if any two can share one.
   */
  readonly witnesses: readonly (readonly PartId[])[];
  /** In every way that needs no more. Where one origin is enough, nothing is forced and there are none. */
  readonly alwaysTogether: readonly (readonly [PartId, PartId])[];
  readonly alwaysApart: readonly (readonly [PartId, PartId])[];
  /** Parts recorded as together, or single ones, that no place and year allows; they are in no group, and not counted. */
  readonly impossible: readonly (readonly PartId[])[];
  /** The search ended before it was through; the bound holds all the same. */
  readonly cut: boolean;
}

export interface Origins {
  /** From what is possible, without any fall-back. */
  readonly possible: OriginCount;
  /** If habits held as well. */
  readonly usual: OriginCount;
  /** Whether "nobody had it earlier" would raise the count. */
  readonly moreByFallback: boolean;
}
