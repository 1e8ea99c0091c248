/** The longest pause between two tries, in milliseconds. */
const LONGEST_PAUSE = 16;

/**
 * Tries something until it gives an answer or `patience` milliseconds are over; undefined then. Each try is over at once, and
 * the event loop goes on between two. Pauses are of random length, so that programs do not keep in step.
 */
export async function tryInTime<Answer>(
  patience: number,
  attempt: () => Answer | undefined,
): Promise<Answer | undefined> {
  const deadline = performance.now() + patience;
  for (let longest = 1; ; longest = Math.min(2 * longest, LONGEST_PAUSE)) {
    const answer = attempt();
    if (answer !== undefined || performance.now() >= deadline) return answer;
    await new Promise((resolve) => setTimeout(resolve, Math.random() * longest));
  }
}
