/** What a search may use, in steps and never in time. */
export interface MendBudget {
  /** States of the search for the cheapest, and as many of the search that lists. */
  readonly states: number;
  /** Whole mends listed, and options of each part. */
  readonly listed: number;
  readonly options: number;
}

export const MEND_BUDGET: MendBudget = { states: 20_000, listed: 10, options: 8 };

/** Steps that are left. */
export class Steps {
  #left: number;

  constructor(steps: number) {
    this.#left = steps;
  }

  get areUsed(): boolean {
    return this.#left <= 0;
  }

  use(steps = 1): void {
    this.#left -= steps;
  }
}
