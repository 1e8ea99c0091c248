import type { ProblemFieldsFragment } from "./Examination.graphql.ts";

/**
 * The problem that belongs to a place in the piece, e.g. `attribution.date` or `parts.3.label`; a path may begin with
 * the name of the argument.
 */
export function problemAt(
  problems: readonly ProblemFieldsFragment[],
  place: string,
): ProblemFieldsFragment | undefined {
  return problems.find(({ path }) => path.join(".").replace(/^piece\./, "") === place);
}

/** Problems that no field of the page shows. */
export const problemsElsewhere = (
  problems: readonly ProblemFieldsFragment[],
  shown: readonly string[],
): readonly ProblemFieldsFragment[] =>
  problems.filter(({ path }) => !shown.includes(path.join(".").replace(/^piece\./, "")));
