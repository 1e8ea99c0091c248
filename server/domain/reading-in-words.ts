import type { Reading } from "./source.ts";

/** How far a source was read when its claims were taken from it. */
export const READING_IN_WORDS: Readonly<Record<Reading, string>> = {
  read: "read in the passages cited",
  opening: "read in its opening pages or abstract only",
  secondary: "known through another source that cites it",
  known: "known to exist; not read for these claims",
};
