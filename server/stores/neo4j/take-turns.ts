import { inTime, TOO_LATE } from "../../ports/in-time.ts";

export interface Turns {
  /**
   * Does some work when all before it has ended, or `TOO_LATE` if that takes longer than `patience` milliseconds; it is not
   * begun then. Work that has not ended after `longest` is left to itself, answered with `TOO_LATE`, and the next begins;
   * `isGivenUp` tells it so.
   */
  take<Answer>(
    work: (isGivenUp: () => boolean) => Promise<Answer>,
    limits: { readonly patience: number; readonly longest: number },
  ): Promise<Answer | typeof TOO_LATE>;
  /** Until all that was taken has ended or was given up. */
  ended(): Promise<void>;
}

/** Lets one do its work after the other. */
export function takeTurns(): Turns {
  let last: Promise<void> = Promise.resolve();
  return {
    take: async (work, { patience, longest }) => {
      const before = last;
      const turn = Promise.withResolvers<void>();
      last = turn.promise;
      if ((await inTime(before, patience)) === TOO_LATE) {
        before.then(turn.resolve);
        return TOO_LATE;
      }
      let isGivenUp = false;
      try {
        const answer = await inTime(
          work(() => isGivenUp),
          longest,
        );
        isGivenUp = answer === TOO_LATE;
        return answer;
      } finally {
        turn.resolve();
      }
    },
    ended: () => last,
  };
}
