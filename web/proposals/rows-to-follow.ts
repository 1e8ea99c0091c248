/** Rows that a list which follows others comes to by itself; whoever wants more reads on. */
export const MOST_FOLLOWED = 1000;

interface Shown {
  readonly rows: number;
  /** Of how many. */
  readonly count: number;
}

/**
 * How many rows of a list are read anew: as many as are shown with all that came since, however many, and at least `more`, so that
 * what comes in pushes none of them out.
 */
export const rowsToFollow =
  ({ rows, count }: Shown, more: number) =>
  (countNow: number): number =>
    Math.max(rows, Math.min(MOST_FOLLOWED, rows + Math.max(more, countNow - count)));
