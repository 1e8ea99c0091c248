import type { MendInstance } from "#tests/support/mend-instance.ts";

/**
 * Mends by trying every set of things to give up, smallest first, on years of five: a set will do if in some claimed year every part finds a
 * year of its own, and every sighting a year in which it was made, that everything not given up allows. For small instances: the number of sets
 * doubles with everything that can be given up.
 */
interface Thing {
  readonly name: string;
  readonly price: number;
}

/** Years at which windows begin and end. */
const YEARS: readonly number[] = Array.from({ length: 61 }, (_, n) => 1600 + 5 * n);
/** And one between each and the next: the piece can be of a year between that of an older part and that of a younger one. */
const MAKING = YEARS.flatMap((year) => [year, year + 2]);

export function thingsIn({ parts, observations, claims, separate, notSeparate }: MendInstance): Thing[] {
  return [
    ...Object.entries(parts).flatMap(([part, { later, reused }]) => [
      { name: `later(${part})`, price: later },
      { name: `reused(${part})`, price: reused },
    ]),
    ...Object.entries(observations).flatMap(([observation, { altered, misread }]) => [
      { name: `altered(${observation})`, price: altered },
      { name: `misread(${observation})`, price: misread },
    ]),
    ...Object.entries(claims).map(([name, price]) => ({ name, price })),
    ...separate.map((pair) => ({ name: `not-separate(${pair.join(",")})`, price: notSeparate })),
  ];
}

/** Whether everything holds in this year of making once the set is given up. */
function holdsIn(year: number, set: ReadonlySet<string>, instance: MendInstance): boolean {
  const { parts, observations, windows, separate, examined } = instance;
  const years = YEARS.filter((one) => one <= examined);
  const allows = (observation: string, made: number): boolean =>
    windows.every(
      (window) =>
        window.observation !== observation ||
        window.claims.some((claim) => set.has(claim)) ||
        window.years.some(([first, last]) => first <= made && made <= last),
    );
  const partHolds = (part: string, own: number): boolean =>
    Object.entries(observations).every(
      ([observation, of]) =>
        of.part !== part ||
        set.has(`misread(${observation})`) ||
        allows(observation, own) ||
        (set.has(`altered(${observation})`) &&
          years.some((made) => made >= own && allows(observation, made))),
    );
  const isOther = new Map<string, boolean>();
  for (const part of Object.keys(parts)) {
    const asFirst = partHolds(part, year);
    const asOther = years.some(
      (own) =>
        partHolds(part, own) &&
        ((own > year && set.has(`later(${part})`)) || (own < year && set.has(`reused(${part})`))),
    );
    if (!asFirst && !asOther) return false;
    isOther.set(part, asOther);
  }
  return separate.every(([a, b]) => set.has(`not-separate(${a},${b})`) || isOther.get(a) || isOther.get(b));
}

export function holds(set: ReadonlySet<string>, instance: MendInstance): boolean {
  const [first, last] = instance.claimed;
  return MAKING.some((year) => first <= year && year <= last && holdsIn(year, set, instance));
}

/** All minimal sets, as sorted words with their price. */
export function slowMends(instance: MendInstance): ReadonlyMap<string, number> {
  const things = thingsIn(instance);
  const bits = (set: number): number => set.toString(2).replaceAll("0", "").length;
  const found: number[] = [];
  const sets = Array.from({ length: 2 ** things.length }, (_, set) => set).sort((a, b) => bits(a) - bits(b));
  for (const set of sets) {
    if (found.some((smaller) => (set & smaller) === smaller)) continue;
    const names = new Set(things.filter((_, i) => set & (1 << i)).map(({ name }) => name));
    if (holds(names, instance)) found.push(set);
  }
  return new Map(
    found.map((set) => {
      const given = things.filter((_, i) => set & (1 << i));
      const words = given
        .map(({ name }) => name)
        .sort()
        .join(" + ");
      return [words, given.reduce((sum, { price }) => sum + price, 0)];
    }),
  );
}
