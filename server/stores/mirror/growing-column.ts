/** Whole numbers that are pushed one by one. */
export interface GrowingColumn {
  readonly length: number;
  push(number: number): void;
  /** The numbers so far; nothing is pushed afterwards. */
  numbers(): Int32Array;
}

/** An empty column. */
export function growingColumn(): GrowingColumn {
  let array = new Int32Array(1024);
  let length = 0;
  return {
    get length() {
      return length;
    },
    push: (number) => {
      if (length === array.length) {
        const larger = new Int32Array(length * 2);
        larger.set(array);
        array = larger;
      }
      array[length++] = number;
    },
    numbers: () => array.subarray(0, length),
  };
}
