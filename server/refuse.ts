import type { Problem } from "./domain/problem.ts";

/** Ends a command with what is wrong, a line a problem on stderr, and exit status 2. */
export function refuse(...problems: readonly Problem[]): void {
  for (const { code, message } of problems) process.stderr.write(`${code}: ${message}\n`);
  process.exitCode = 2;
}
