/** Two revisions that are compared. */
export interface Two {
  readonly from: number;
  readonly to: number;
}

/** The two that an address asks for, if it does. */
export function readTwo(search: string): Two | undefined {
  const parameters = new URLSearchParams(search);
  const [from, to] = [parameters.get("from"), parameters.get("to")];
  const isNumber = (text: string | null): text is string => text !== null && /^\d{1,9}$/.test(text);
  return isNumber(from) && isNumber(to) ? { from: Number(from), to: Number(to) } : undefined;
}

/** Where two revisions are compared. */
export const addressOfDifference = (from: number, to: number): string =>
  `/house/history?from=${from}&to=${to}`;
