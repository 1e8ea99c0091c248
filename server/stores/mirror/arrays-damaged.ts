/** Something was found in the arrays that cannot be: they are to be built anew. */
export class ArraysDamaged extends Error {
  constructor(what: string) {
    super(`The arrays are damaged: ${what}`);
  }
}
