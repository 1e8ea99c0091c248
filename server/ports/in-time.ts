/** Stands for an answer that did not come in time. */
export const TOO_LATE = Symbol("too late");

/** The answer, or `TOO_LATE` after so many milliseconds; what comes later, or fails later, is dropped. */
export function inTime<Answer>(
  answer: Promise<Answer>,
  milliseconds: number,
): Promise<Answer | typeof TOO_LATE> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => resolve(TOO_LATE), Math.max(0, milliseconds));
    answer.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
