import { StoreFailed } from "./ports/store-failed.ts";
import { refuse } from "./refuse.ts";

/** Runs a command. A store that fails under it is a refusal; a reader of its output that has gone away is no failure. */
export async function runCommand(main: () => Promise<void>): Promise<void> {
  try {
    await main();
  } catch (failure) {
    if (failure instanceof StoreFailed) return refuse(failure.problem);
    if ((failure as NodeJS.ErrnoException).code !== "EPIPE") throw failure;
  }
}
