import { vi } from "vitest";

/** The answer, for which a clock of its own goes on by a second again and again; the real one goes on after it. */
export async function afterSeconds<Answer>(asking: Promise<Answer>): Promise<Answer> {
  let isAnswered = false;
  asking.finally(() => {
    isAnswered = true;
  });
  while (!isAnswered) {
    await vi.advanceTimersByTimeAsync(1_000);
    await new Promise((resolve) => setImmediate(resolve));
  }
  // What is made of a graph rests by the clock from here on.
  vi.useRealTimers();
  return asking;
}
