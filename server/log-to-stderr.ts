import type { Log } from "./ports/log.ts";

// Without a listener, a full disk or a reader that has gone away would end the program.
process.stderr.on("error", () => {});

/** One JSON object a line on standard error. What cannot be written there is dropped. */
export const logToStderr: Log = (line) => {
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), ...line })}\n`);
};
