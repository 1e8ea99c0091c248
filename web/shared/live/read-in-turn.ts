/** Milliseconds between the end of one reading and the next: what is told in between is read together. */
const REST = 400;

/** Asks to read anew as often as one likes: one reading at a time, and one more after it where something was told meanwhile. */
export function readInTurn(read: () => Promise<unknown>, rest = REST): () => void {
  let isWanted = false;
  let isRunning = false;
  const run = async (): Promise<void> => {
    isRunning = true;
    while (isWanted) {
      isWanted = false;
      // What could not be read is read at the next news; the page shows by itself that the connection is lost.
      await read().catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, rest));
    }
    isRunning = false;
  };
  return () => {
    isWanted = true;
    if (!isRunning) void run();
  };
}
