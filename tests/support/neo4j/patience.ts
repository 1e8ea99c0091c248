/** Milliseconds that a store waits for others, unless the test is about that: on a busy machine they take long. */
export const PATIENCE = 60_000;
