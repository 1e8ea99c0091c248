/** Lets everybody else who waits have a turn, in the middle of long work. */
export const nextTurn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
