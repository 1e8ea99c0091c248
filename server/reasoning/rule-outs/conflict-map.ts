/** What is left to try of the subsets of 0 to `size - 1`: clauses that are all positive or all negative, and a solver for them. */
export interface ConflictMap {
  /** Leaves out every set that has none of these. */
  readonly needOneOf: (members: readonly number[]) => void;
  /** Leaves out every set that has all of these. */
  readonly notAllOf: (members: readonly number[]) => void;
  /** A set that is not left out, as large as comes of taking in each member in turn; ascending. None: `through`, or out of `steps`. */
  readonly next: () => readonly number[] | "through" | "cut";
}

interface Clause {
  readonly members: readonly number[];
  /** Whether a member taken in meets it, or one left out. */
  readonly isMetBy: 0 | 1;
  undecided: number;
  met: number;
}

const UNDECIDED = -1;

/** A map of `size` members whose solver takes at most `steps` decisions in all (Davis, Logemann & Loveland 1962, members taken in first). */
export function conflictMap(size: number, steps: number): ConflictMap {
  const clauses: Clause[] = [];
  const clausesOf: Clause[][] = Array.from({ length: size }, () => []);
  const value = new Int8Array(size).fill(UNDECIDED);
  const trail: number[] = [];
  let [left, isThrough] = [steps, false];

  function add(members: readonly number[], isMetBy: 0 | 1): void {
    if (members.length === 0) isThrough = true;
    const clause: Clause = { members, isMetBy, undecided: members.length, met: 0 };
    clauses.push(clause);
    for (const member of members) clausesOf[member]?.push(clause);
  }

  /** Decides a member and all that follows; false if some clause can no longer be met. */
  function decide(first: number, as: 0 | 1): boolean {
    const from = trail.length;
    let isSound = set(first, as);
    for (let at = from; isSound && at < trail.length; at++)
      for (const clause of clausesOf[trail[at] as number] as readonly Clause[]) {
        if (clause.met > 0 || clause.undecided > 1) continue;
        const last = clause.members.find((member) => value[member] === UNDECIDED);
        isSound = last !== undefined && set(last, clause.isMetBy);
        if (!isSound) break;
      }
    return isSound;
  }

  function set(member: number, as: 0 | 1): boolean {
    if (value[member] !== UNDECIDED) return value[member] === as;
    value[member] = as;
    trail.push(member);
    for (const clause of clausesOf[member] as readonly Clause[]) {
      clause.undecided--;
      if (clause.isMetBy === as) clause.met++;
    }
    return true;
  }

  function takeBack(to: number): void {
    while (trail.length > to) {
      const member = trail.pop() as number;
      for (const clause of clausesOf[member] as readonly Clause[]) {
        clause.undecided++;
        if (clause.isMetBy === value[member]) clause.met--;
      }
      value[member] = UNDECIDED;
    }
  }

  function search(from: number): boolean {
    let member = from;
    while (member < size && value[member] !== UNDECIDED) member++;
    if (member === size) return true;
    if (left-- <= 0) return false;
    const before = trail.length;
    for (const as of [1, 0] as const) {
      if (decide(member, as) && search(member + 1)) return true;
      if (left <= 0) return false;
      takeBack(before);
    }
    return false;
  }

  /** What clauses of one member say. */
  const decideSingles = (): boolean =>
    clauses.every(({ members, isMetBy }) => members.length > 1 || decide(members[0] as number, isMetBy));

  return {
    needOneOf: (members) => add(members, 1),
    notAllOf: (members) => add(members, 0),
    next: () => {
      if (isThrough) return "through";
      const isFound = decideSingles() && search(0);
      const found = [...value.keys()].filter((member) => value[member] === 1);
      takeBack(0);
      if (isFound) return found;
      if (left <= 0) return "cut";
      isThrough = true;
      return "through";
    },
  };
}
