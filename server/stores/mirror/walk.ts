import type { NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import { ArraysDamaged } from "./arrays-damaged.ts";
import { BOUNDS, hasExceptions, NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** An ask in the numbers of the arrays. Seeds that are no terms are left out; regions that are none are -1. */
export interface NumberedAsk {
  readonly seeds: readonly number[];
  readonly regions: readonly number[];
  readonly maxDepth: number;
}

/** Looks the ids of an ask up. */
export const numberedAsk = ({ terms }: WalkArrays, ask: Omit<NeighbourhoodAsk, "at">): NumberedAsk => ({
  seeds: ask.seeds.map(terms.find).filter((seed) => seed >= 0),
  regions: ask.regions.map(terms.find),
  maxDepth: ask.maxDepth,
});

/** What a walk found, in arrays of the walker that are good until its next walk. */
export interface Walked {
  /** The first `reachedCount` are the reached terms, nearest first; beside them the fewest steps. */
  readonly reached: Int32Array;
  readonly depths: Int32Array;
  readonly reachedCount: number;
  /** The first `claimCount` are the claims. */
  readonly claims: Int32Array;
  readonly claimCount: number;
  /** Terms at the depth limit that would lead on. */
  readonly cutAt: readonly number[];
}

const DAMAGE = "a walk found more than there is";

/** Walks over the arrays as they stand at each call; nothing is allocated but its answer and the list of cuts. */
export function walker(arrays: WalkArrays): (ask: NumberedAsk) => Walked {
  /** By term: the walk that reached it. */
  let seen = new Int32Array(0);
  /** By region: twice the walk that asked whether it is in scope, and one more if it is. */
  let scope = new Int32Array(0);
  /** By region: the walk that was asked for it. */
  let asked = new Int32Array(0);
  let reached = new Int32Array(0);
  let depths = new Int32Array(0);
  let found = new Int32Array(0);
  let walk = 0;

  const begin = (): void => {
    const { length } = arrays.stands;
    // Half of what fits, as marks of scope are twice as high.
    if (seen.length < length || walk >= 2 ** 30 - 2) {
      [seen, scope, asked] = [new Int32Array(length), new Int32Array(length), new Int32Array(length)];
      [reached, depths] = [new Int32Array(length), new Int32Array(length)];
      walk = 0;
    }
    if (found.length < arrays.exceptions.first.length) found = new Int32Array(arrays.exceptions.first.length);
    walk++;
  };

  /** Marks the asked regions, and as in scope those and what is above them. */
  const openScope = (regions: readonly number[]): void => {
    const { broader } = arrays;
    const isIn = walk * 2 + 1;
    for (const region of regions) {
      if (region < 0) continue;
      asked[region] = walk;
      for (let term = region; term >= 0 && scope[term] !== isIn; term = broader[term] as number)
        scope[term] = isIn;
    }
  };
  /** Whether a region that was not marked yet is below an asked one. */
  const findScope = (region: number): boolean => {
    const { broader } = arrays;
    let isIn = false;
    let steps = 0;
    for (let term = region; term >= 0 && !isIn && steps <= seen.length; term = broader[term] as number) {
      isIn = asked[term] === walk;
      steps++;
    }
    scope[region] = walk * 2 + Number(isIn);
    return isIn;
  };
  const isInScope = (region: number): boolean => {
    const mark = scope[region] as number;
    return mark >>> 1 === walk ? (mark & 1) === 1 : findScope(region);
  };

  return ({ seeds, regions, maxDepth }) => {
    begin();
    openScope(regions);
    const everywhere = regions.length === 0;
    const { bounds, stands } = arrays;
    const leads = arrays.leads.rows;
    const statements = arrays.statements.rows;
    const [leadsUsed, statementsUsed] = [arrays.leads.used, arrays.statements.used];
    const cutAt: number[] = [];
    let terms = 0;
    let claims = 0;
    for (let i = 0; i < seeds.length; i++) {
      const seed = seeds[i] as number;
      if (seen[seed] === walk || stands[seed] === 0) continue;
      seen[seed] = walk;
      depths[terms] = 0;
      reached[terms++] = seed;
    }
    let limit = maxDepth > 0 ? -1 : 0;
    for (let at = 0; at < terms; at++) {
      const term = reached[at] as number;
      const depth = depths[at] as number;
      const to = bounds[term * BOUNDS + 1] as number;
      if (to > leadsUsed) throw new ArraysDamaged(DAMAGE);
      if (depth >= maxDepth) {
        if (limit < 0) limit = at;
      } else
        for (let lead = bounds[term * BOUNDS] as number; lead < to; lead++) {
          const target = leads[lead * 2] as number;
          if (seen[target] === walk) continue;
          const region = leads[lead * 2 + 1] as number;
          if (!everywhere && region !== NO_TERM && !isInScope(region)) continue;
          seen[target] = walk;
          depths[terms] = depth + 1;
          reached[terms++] = target;
        }
      const end = bounds[term * BOUNDS + 3] as number;
      if (end > statementsUsed) throw new ArraysDamaged(DAMAGE);
      for (let place = bounds[term * BOUNDS + 2] as number; place < end; place++)
        found[claims++] = statements[place] as number;
    }
    // Terms at the limit were not followed; all that is reached is known only now.
    if (limit >= 0)
      for (let at = limit; at < terms; at++) {
        const term = reached[at] as number;
        const to = bounds[term * BOUNDS + 1] as number;
        for (let lead = bounds[term * BOUNDS] as number; lead < to; lead++) {
          const region = leads[lead * 2 + 1] as number;
          if (seen[leads[lead * 2] as number] === walk) continue;
          if (!everywhere && region !== NO_TERM && !isInScope(region)) continue;
          cutAt.push(term);
          break;
        }
      }
    const { exceptions } = arrays;
    const { first, next } = exceptions;
    // Over a list that grows: exceptions have exceptions of their own.
    for (let i = 0; i < claims; i++) {
      const claim = found[i] as number;
      if (!hasExceptions(exceptions, claim)) continue;
      for (let exception = first[claim] as number; exception >= 0; exception = next[exception] as number) {
        if (claims >= found.length) throw new ArraysDamaged(DAMAGE);
        found[claims++] = exception;
      }
    }
    if (claims > found.length || terms > seen.length) throw new ArraysDamaged(DAMAGE);
    return { reached, depths, reachedCount: terms, claims: found, claimCount: claims, cutAt };
  };
}
