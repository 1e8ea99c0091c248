import type { Clash } from "./clash.ts";

/**
 * The clashes that contain no other (E26), each once: physical ones no physical one, practice ones none at all. (A physical clash can hold a
 * habit that clashes by itself: where an assumed begin rests on the first year of that habit.)
 */
export function minimalClashes(clashes: readonly Clash[]): readonly Clash[] {
  const physical = minimal(clashes.filter(({ hardness }) => hardness === "physical"));
  return [...physical, ...minimal(clashes).filter(({ hardness }) => hardness === "practice")];
}

/** A clash with its atoms as numbers, the one that the fewest clashes have first. */
interface Numbered {
  readonly clash: Clash;
  readonly atoms: readonly number[];
}

/**
 * From the smallest up, each that holds none of those found. A clash that is held has all its atoms in the one that holds
 * it, so it is looked for under its rarest atom alone: there can be a hundred thousand clashes, and few share that one.
 */
function minimal(clashes: readonly Clash[]): readonly Clash[] {
  const byRarest = new Map<number | undefined, Numbered[]>();
  const found: Clash[] = [];
  for (const one of numberAtoms(clashes)) {
    if (one.atoms.some((atom) => byRarest.get(atom)?.some((other) => isAllIn(other.atoms, one.atoms))))
      continue;
    found.push(one.clash);
    const [rarest] = one.atoms;
    const sharing = byRarest.get(rarest);
    if (sharing) sharing.push(one);
    else byRarest.set(rarest, [one]);
  }
  return found;
}

/** The smallest first; as many clashes as possible differ in their first atoms. */
function numberAtoms(clashes: readonly Clash[]): readonly Numbered[] {
  const uses = new Map<string, number>();
  for (const { held } of clashes) for (const { key } of held) uses.set(key, (uses.get(key) ?? 0) + 1);
  const byUse = [...uses].sort(([, a], [, b]) => a - b);
  const numbers = new Map(byUse.map(([key], n) => [key, n]));
  return clashes
    .map((clash) => ({
      clash,
      atoms: clash.held.map(({ key }) => numbers.get(key) as number).sort((a, b) => a - b),
    }))
    .sort((a, b) => a.atoms.length - b.atoms.length);
}

/** Whether all of `a` is in `b`, both ascending. */
function isAllIn(a: readonly number[], b: readonly number[]): boolean {
  let j = 0;
  for (const atom of a) {
    while (j < b.length && (b[j] as number) < atom) j++;
    if (b[j] !== atom) return false;
    j++;
  }
  return true;
}
