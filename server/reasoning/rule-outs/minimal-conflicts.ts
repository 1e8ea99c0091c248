import { conflictMap } from "./conflict-map.ts";

/** Members 0 to `size - 1`, the one to be kept most first; a set that holds still holds when members are taken out of it. */
export interface HoldQuestion {
  readonly size: number;
  readonly holds: (members: readonly number[]) => boolean;
  /** Sets known not to hold: nothing that has all of one is found again. */
  readonly known: readonly (readonly number[])[];
}

/** Steps a search may take, counted down as it goes; shared by several searches. */
export interface Steps {
  /** Sets asked of. */
  asked: number;
  /** Decisions in choosing the next set to ask of. */
  readonly decisions: number;
}

/**
 * All minimal sets of members that do not hold together, one by one, each ascending (MARCO: Liffiton, Previti, Malik & Marques-Silva
 * 2016). Returns whether it came through within its steps.
 */
export function* minimalConflicts(
  { size, holds, known }: HoldQuestion,
  steps: Steps,
): Generator<readonly number[], boolean> {
  const map = conflictMap(size, steps.decisions);
  for (const set of known) map.notAllOf(set);
  for (;;) {
    if (steps.asked <= 0) return false;
    steps.asked--;
    const seed = map.next();
    if (seed === "cut") return false;
    if (seed === "through") return true;
    if (holds(seed)) {
      map.needOneOf(leftOutOf(growSet(seed, size, holds), size));
      continue;
    }
    const conflict = explain(seed, holds);
    yield conflict;
    map.notAllOf(conflict);
  }
}

/** Takes in what can be, in order. */
function growSet(seed: readonly number[], size: number, holds: HoldQuestion["holds"]): readonly number[] {
  let grown = seed;
  for (const member of leftOutOf(seed, size)) {
    const larger = [...grown, member];
    if (holds(larger)) grown = larger;
  }
  return grown;
}

function leftOutOf(set: readonly number[], size: number): readonly number[] {
  const taken = new Set(set);
  return Array.from({ length: size }, (_, member) => member).filter((member) => !taken.has(member));
}

/**
 * The minimal part of a set that does not hold which keeps its first members where there is a choice (QuickXplain: Junker 2004).
 * Ascending if the set is.
 */
export function explain(set: readonly number[], holds: HoldQuestion["holds"]): readonly number[] {
  const within = (base: readonly number[], members: readonly number[], isNew: boolean): readonly number[] => {
    if (isNew && !holds(base)) return [];
    if (members.length === 1) return members;
    const half = members.length >> 1;
    const [first, second] = [members.slice(0, half), members.slice(half)];
    const ofSecond = within([...base, ...first], second, first.length > 0);
    const ofFirst = within([...base, ...ofSecond], first, ofSecond.length > 0);
    return [...ofFirst, ...ofSecond];
  };
  return set.length === 0 ? [] : within([], set, false);
}
