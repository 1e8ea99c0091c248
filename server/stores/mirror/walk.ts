import type { NeighbourhoodAsk } from "../../domain/neighbourhood.ts";
import { ArraysDamaged } from "./arrays-damaged.ts";
import { hasExceptions, NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** What a walk found, as numbers. The arrays are the walker's own, good until its next walk. */
export interface Walked {
  /** Reached terms, nearest first. */
  readonly reached: Int32Array;
  /** By place in `reached`: the fewest steps. */
  readonly depths: Int32Array;
  readonly claims: Int32Array;
  /** Terms at the depth limit that would lead on. */
  readonly cutAt: readonly number[];
}

type Walker = (ask: NeighbourhoodAsk) => Walked;

/** Walks over the arrays as they stand at each call; nothing is allocated but the list of cuts. */
export function walker(arrays: WalkArrays): Walker {
  let terms = 0;
  /** By term: the walk that reached it. */
  let seen = new Int32Array(0);
  let reached = new Int32Array(0);
  let depths = new Int32Array(0);
  /** By region: the walk times two, and one more if the region is in scope. */
  let scope = new Int32Array(0);
  let found = new Int32Array(0);
  let walk = 0;

  const begin = (): void => {
    if (terms < arrays.stands.length) {
      terms = arrays.stands.length;
      [seen, reached, depths, scope] = [0, 0, 0, 0].map(() => new Int32Array(terms)) as [
        typeof seen,
        typeof seen,
        typeof seen,
        typeof seen,
      ];
      walk = 0;
    }
    if (found.length < arrays.exceptions.first.length) found = new Int32Array(arrays.exceptions.first.length);
    // Half of what fits, as the marks of regions are twice as high.
    if (walk >= 2 ** 30 - 2) {
      for (const marks of [seen, scope]) marks.fill(0);
      walk = 0;
    }
    walk++;
  };

  /** Marks the asked regions and those above as in scope. */
  const openScope = (regions: NeighbourhoodAsk["regions"]): void => {
    const { broader } = arrays;
    for (const region of regions)
      for (
        let term = arrays.terms.find(region);
        term >= 0 && scope[term] !== walk * 2 + 1;
        term = broader[term] as number
      )
        scope[term] = walk * 2 + 1;
  };
  /** Whether a region is an asked one, above one or below one. Ones above or below are marked as they are asked for. */
  const isInScope = (region: number, asked: ReadonlySet<number>): boolean => {
    const mark = scope[region] as number;
    if (mark >>> 1 === walk) return (mark & 1) === 1;
    const { broader } = arrays;
    let isIn = false;
    for (let term = region, steps = 0; term >= 0 && steps < terms; term = broader[term] as number, steps++)
      if (asked.has(term)) {
        isIn = true;
        break;
      }
    scope[region] = walk * 2 + Number(isIn);
    return isIn;
  };

  return ({ seeds, regions, maxDepth }) => {
    begin();
    const everywhere = regions.length === 0;
    const asked = new Set(regions.map((region) => arrays.terms.find(region)));
    openScope(regions);
    const { from: leadFrom, to: leadTo } = arrays.leads;
    const [targets, within] = arrays.leads.columns as [Int32Array, Int32Array];
    const mayFollow = (lead: number): boolean => {
      const region = within[lead] as number;
      return everywhere || region === NO_TERM || isInScope(region, asked);
    };

    let many = 0;
    for (const seed of seeds) {
      const term = arrays.terms.find(seed);
      if (term < 0 || seen[term] === walk || arrays.stands[term] === 0) continue;
      seen[term] = walk;
      depths[many] = 0;
      reached[many++] = term;
    }
    let atLimit = maxDepth <= 0 ? 0 : many;
    for (let next = 0, levelEnd = many, depth = 0; next < many && depth < maxDepth; ) {
      const term = reached[next++] as number;
      if ((leadTo[term] as number) > arrays.leads.used)
        throw new ArraysDamaged("a walk found more than there is");
      for (let lead = leadFrom[term] as number; lead < (leadTo[term] as number); lead++) {
        const target = targets[lead] as number;
        if (seen[target] === walk || !mayFollow(lead)) continue;
        seen[target] = walk;
        depths[many] = depth + 1;
        reached[many++] = target;
      }
      if (next === levelEnd) {
        depth++;
        atLimit = depth === maxDepth ? levelEnd : many;
        levelEnd = many;
      }
    }
    const cutAt: number[] = [];
    for (let i = atLimit; i < many; i++) {
      const term = reached[i] as number;
      for (let lead = leadFrom[term] as number; lead < (leadTo[term] as number); lead++)
        if (seen[targets[lead] as number] !== walk && mayFollow(lead)) {
          cutAt.push(term);
          break;
        }
    }

    const { from, to } = arrays.statements;
    const stated = arrays.statements.columns[0] as Int32Array;
    const { first, next } = arrays.exceptions;
    let claims = 0;
    for (let i = 0; i < many; i++) {
      const term = reached[i] as number;
      if ((to[term] as number) > arrays.statements.used)
        throw new ArraysDamaged("a walk found more than there is");
      for (let place = from[term] as number; place < (to[term] as number); place++)
        found[claims++] = stated[place] as number;
    }
    // Over a list that grows: exceptions have exceptions of their own.
    for (let i = 0; i < claims; i++) {
      const claim = found[i] as number;
      if (!hasExceptions(arrays.exceptions, claim)) continue;
      for (let exception = first[claim] as number; exception >= 0; exception = next[exception] as number) {
        if (claims >= found.length) throw new ArraysDamaged("a walk found more than there is");
        found[claims++] = exception;
      }
    }
    if (claims > found.length || many > terms) throw new ArraysDamaged("a walk found more than there is");
    return {
      reached: reached.subarray(0, many),
      depths: depths.subarray(0, many),
      claims: found.subarray(0, claims),
      cutAt,
    };
  };
}
