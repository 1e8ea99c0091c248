/** Order of ids and keys: by code unit, the same on every machine and in every language. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Order of things that have an id. */
export const compareIds = (a: { readonly id: string }, b: { readonly id: string }): number =>
  compareText(a.id, b.id);

/** The first of several comparisons that decides. */
export const firstDifference = (...differences: readonly number[]): number =>
  differences.find((difference) => difference !== 0) ?? 0;
