/** Whole numbers, or the bytes of ids, that grow at their end. */
export interface GrowingColumn<Numbers extends Uint8Array | Uint32Array | Int32Array> {
  readonly length: number;
  push(number: number): void;
  append(numbers: Numbers): void;
  /** The numbers so far, in an array that is no longer written to if nothing more is pushed. */
  numbers(): Numbers;
}

/** An empty column with room for some numbers; `make` makes an array of a length. */
export function growingColumn<Numbers extends Uint8Array | Uint32Array | Int32Array>(
  make: (length: number) => Numbers,
): GrowingColumn<Numbers> {
  let array = make(1024);
  let length = 0;
  const reserve = (more: number): void => {
    if (length + more <= array.length) return;
    const larger = make(Math.max(length + more, Math.ceil(array.length * 1.5)));
    larger.set(array.subarray(0, length));
    array = larger;
  };
  return {
    get length() {
      return length;
    },
    push: (number) => {
      if (length === array.length) reserve(1);
      array[length] = number;
      length++;
    },
    append: (numbers) => {
      reserve(numbers.length);
      array.set(numbers, length);
      length += numbers.length;
    },
    numbers: () => array.slice(0, length) as Numbers,
  };
}
