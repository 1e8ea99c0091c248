import { ArraysDamaged } from "./arrays-damaged.ts";
import type { WalkArrays } from "./walk-arrays.ts";

/**
 * Collects the terms of a neighbourhood, each once, in the order of their numbers: the reached ones (`reached[i]` is a term
 * times `scale` and something less than it), those that claims name, and all broader ones of either.
 */
export function termCollector(
  arrays: WalkArrays,
): (
  reached: Float64Array,
  scale: number,
  claims: readonly { readonly names: readonly number[] }[],
) => Int32Array {
  /** By term: the collection that met it. */
  let met = new Int32Array(0);
  let found = new Int32Array(0);
  let collections = 0;

  return (reached, scale, claims) => {
    if (met.length < arrays.stands.length || collections === 2 ** 31 - 1) {
      met = new Int32Array(arrays.stands.length);
      found = new Int32Array(arrays.stands.length);
      collections = 0;
    }
    collections++;
    const { broader } = arrays;
    let many = 0;
    const meet = (term: number): void => {
      for (let next = term; next >= 0 && met[next] !== collections; next = broader[next] as number) {
        if (next >= met.length) throw new ArraysDamaged("a term has a number that is too high");
        met[next] = collections;
        found[many++] = next;
      }
    };
    for (const key of reached) meet(Math.floor(key / scale));
    for (const { names } of claims) for (const name of names) meet(name);
    return found.slice(0, many).sort();
  };
}
