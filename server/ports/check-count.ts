/** Throws a RangeError unless so many rows can be asked for. */
export function checkCount(first: number): number {
  if (Number.isInteger(first) && first >= 1) return first;
  throw new RangeError(`A list is asked for 1 row or more, not ${first}`);
}
