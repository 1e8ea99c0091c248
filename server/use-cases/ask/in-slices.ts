import { openTurns } from "../../ports/open-turns.ts";
import type { Steps } from "../../reasoning/in-one-go.ts";

/** Runs long reasoning step by step; `turn`, called after each, lets others have theirs where it is time. */
export async function inSlices<Answer>(steps: Steps<Answer>, turn = openTurns()): Promise<Answer> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    await turn();
  }
}
