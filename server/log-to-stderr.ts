import type { Log } from "./ports/log.ts";

/** One JSON object a line on standard error. */
export const logToStderr: Log = (line) => {
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), ...line })}\n`);
};
