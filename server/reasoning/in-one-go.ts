/** Long reasoning that can be stopped after each step and gone on with later: whoever runs it says when. */
export type Steps<Answer> = Generator<undefined, Answer>;

/** Runs all steps without a stop. */
export function inOneGo<Answer>(steps: Steps<Answer>): Answer {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
