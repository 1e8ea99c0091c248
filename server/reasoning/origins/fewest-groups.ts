import {
  type Bits,
  hasBit,
  isNoBits,
  meetBits,
  noBits,
  type OriginPuzzle,
  setBit,
  shareBits,
} from "./origin-puzzle.ts";

/** Steps that a search may take, counted down as it goes. */
export interface Steps {
  left: number;
}

/** The group of each origin, counted from 0. */
export type Grouping = readonly number[];

interface Group {
  readonly members: Bits;
  readonly cells: Bits;
}

/**
 * Groups the origins into at most `most`, each group with a cell that all of it allows and nobody in it kept apart from another
 * (branch and bound in the order of Brélaz 1979: the one with the fewest groups open to it first, then the one kept apart from
 * most, then the first). `start`: the first groups, in part; they have a cell each. None: there is no such grouping, or the steps ran `out`.
 */
export function groupWithin(
  { origins, apart }: OriginPuzzle,
  most: number,
  start: readonly (readonly number[])[],
  steps: Steps,
): Grouping | "none" | "out" {
  const groupOf: number[] = origins.map(() => -1);
  const groups: Group[] = [];
  const degree = apart.map(countBits);
  if (start.length > most) return "none";

  const fits = (origin: number, { members, cells }: Group): boolean =>
    !shareBits(apart[origin] as Bits, members) && shareBits(cells, origins[origin]?.cells as Bits);

  function put(origin: number, at: number): Group | undefined {
    const before = groups[at];
    const members = before?.members.slice() ?? noBits(origins.length);
    setBit(members, origin);
    const cells = origins[origin]?.cells as Bits;
    groups[at] = { members, cells: before === undefined ? cells : meetBits(before.cells, cells) };
    groupOf[origin] = at;
    return before;
  }

  function takeBack(origin: number, at: number, before: Group | undefined): void {
    groupOf[origin] = -1;
    if (before === undefined) groups.pop();
    else groups[at] = before;
  }

  /** The one to decide next, and the groups open to it. */
  function nextOne(): { readonly origin: number; readonly open: readonly number[] } | undefined {
    let best: { readonly origin: number; readonly open: readonly number[] } | undefined;
    for (let origin = 0; origin < origins.length; origin++) {
      if (groupOf[origin] !== -1) continue;
      const open: number[] = [];
      for (const [at, group] of groups.entries()) if (fits(origin, group)) open.push(at);
      if (groups.length < most) open.push(groups.length);
      const isBetter =
        best === undefined ||
        open.length < best.open.length ||
        (open.length === best.open.length && (degree[origin] as number) > (degree[best.origin] as number));
      if (isBetter) best = { origin, open };
      if (open.length === 0) break;
    }
    return best;
  }

  function search(): "found" | "none" | "out" {
    const next = nextOne();
    if (next === undefined) return "found";
    for (const at of next.open) {
      if (steps.left-- <= 0) return "out";
      const before = put(next.origin, at);
      const found = search();
      if (found !== "none") return found;
      takeBack(next.origin, at, before);
    }
    return "none";
  }

  for (const [at, members] of start.entries()) for (const origin of members) put(origin, at);
  const found = search();
  return found === "found" ? groupOf : found;
}

/** The fewest groups there are, or what is known of them. */
export interface FewestGroups {
  readonly atLeast: number;
  readonly grouping: Grouping;
  /** The grouping has that few. */
  readonly isProved: boolean;
}

/** The fewest groups, from a clique upwards; out of steps, the most that is proved and some grouping. */
export function fewestGroups(puzzle: OriginPuzzle, clique: readonly number[], steps: Steps): FewestGroups {
  const size = puzzle.origins.length;
  const start = clique.map((origin) => [origin]);
  for (let most = Math.max(clique.length, Math.min(1, size)); ; most++) {
    const found = groupWithin(puzzle, most, start, steps);
    if (found === "none") continue;
    if (found !== "out") return { atLeast: most, grouping: found, isProved: true };
    const any = greedyGrouping(puzzle);
    const count = new Set(any).size;
    return { atLeast: most, grouping: any, isProved: count === most };
  }
}

/** Each origin into the first group that is open to it. */
function greedyGrouping({ origins, apart }: OriginPuzzle): Grouping {
  const groups: { members: number[]; cells: Bits }[] = [];
  return origins.map(({ cells }, origin) => {
    const at = groups.findIndex(
      (group) =>
        !isNoBits(meetBits(group.cells, cells)) &&
        !group.members.some((member) => hasBit(apart[origin] as Bits, member)),
    );
    if (at === -1) return groups.push({ members: [origin], cells }) - 1;
    const group = groups[at] as (typeof groups)[number];
    group.members.push(origin);
    group.cells = meetBits(group.cells, cells);
    return at;
  });
}

function countBits(bits: Bits): number {
  let count = 0;
  for (let at = 0; at < bits.length * 32; at++) if (hasBit(bits, at)) count++;
  return count;
}
