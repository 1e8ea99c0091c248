import type { Progress } from "./ports/progress.ts";

/** What progress is shown on: standard error, or what stands for it. */
export interface Shown {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

/** Milliseconds between two updates of the line on a terminal, and between two lines elsewhere. */
const ON_TERMINAL = 100;
const ELSEWHERE = 10_000;

/**
 * Shows progress as one line that is written over on a terminal, and as a line now and then elsewhere. `done` ends the
 * line, so that what is written next stands on its own.
 */
export function sayProgress(
  shown: Shown = process.stderr,
  now: () => number = () => performance.now(),
): { readonly tell: Progress; done(): void } {
  const every = shown.isTTY ? ON_TERMINAL : ELSEWHERE;
  let last = now();
  let isOpen = false;
  return {
    tell: (words) => {
      if (now() - last < every) return;
      last = now();
      isOpen = shown.isTTY === true;
      shown.write(isOpen ? `\r${words()}\u001b[K` : `${words()}\n`);
    },
    done: () => {
      if (isOpen) shown.write("\r\u001b[K");
      isOpen = false;
    },
  };
}

/** A whole number for people: 1,000,000. */
export const inWords = (number: number): string => number.toLocaleString("en-GB");
