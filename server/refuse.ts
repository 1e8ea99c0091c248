import type { Problem } from "./domain/problem.ts";

/** Place in a JSON file as a JSON pointer (RFC 6901). A path that starts with a number counts lines, which the message names. */
function placeOf({ path }: Problem): string {
  if (typeof path[0] !== "string") return "";
  const steps = path.map((step) => String(step).replaceAll("~", "~0").replaceAll("/", "~1"));
  return ` at /${steps.join("/")}`;
}

/** Ends a command with what is wrong, a line a problem on stderr (`CODE at /place: sentence`), and exit status 2. */
export function refuse(...problems: readonly Problem[]): void {
  for (const problem of problems)
    process.stderr.write(`${problem.code}${placeOf(problem)}: ${problem.message}\n`);
  process.exitCode = 2;
}
