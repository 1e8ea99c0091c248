/** Numbers in ascending order, without repeats, in one array that grows by halves. */
export interface Postings {
  readonly add: (number: number) => void;
  readonly remove: (number: number) => void;
  /** The part of the array that is in use; holds until the next change. */
  readonly all: () => Int32Array;
  readonly bytes: () => number;
}

const FIRST = 4;

export function openPostings(): Postings {
  let numbers = new Int32Array(FIRST);
  let count = 0;
  /** Where the number stands or would stand. */
  const placeOf = (number: number): number => {
    // Examinations are mostly met in the order of their numbers.
    if (count === 0 || (numbers[count - 1] as number) < number) return count;
    let [low, high] = [0, count];
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((numbers[middle] as number) < number) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    add: (number) => {
      const at = placeOf(number);
      if (at < count && numbers[at] === number) return;
      if (count === numbers.length) {
        const grown = new Int32Array(Math.ceil(count * 1.5));
        grown.set(numbers);
        numbers = grown;
      }
      numbers.copyWithin(at + 1, at, count);
      numbers[at] = number;
      count++;
    },
    remove: (number) => {
      const at = placeOf(number);
      if (at >= count || numbers[at] !== number) return;
      numbers.copyWithin(at, at + 1, count);
      count--;
    },
    all: () => numbers.subarray(0, count),
    bytes: () => numbers.byteLength,
  };
}
