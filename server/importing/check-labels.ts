import { type Problem, problem } from "../domain/problem.ts";
import type { Term } from "../domain/term.ts";
import type { ImportTarget } from "../ports/import-target.ts";
import { type ImportLine, saidOfLine } from "./read-import-line.ts";

/** Finds labels and other labels that name two terms of one kind, whatever their capitals. */
export interface LabelCheck {
  check(line: ImportLine & { readonly kind: "term" }): readonly Problem[];
}

/**
 * The labels of a file against each other and against those that stand in the store, but for terms that the file itself
 * brings again: `isInside` knows their ids.
 */
export function openLabelCheck(): LabelCheck & {
  /** After the last line: labels of the store that the file would give to other terms too. */
  checkStanding(store: ImportTarget, isInside: (id: string) => boolean): Promise<readonly Problem[]>;
} {
  const seen = new Map<string, { readonly id: string; readonly line: number }>();
  return {
    check: ({ thing, line }) =>
      labelsOf(thing).flatMap(([text, path]) => {
        const key = keyOf(thing, text);
        const first = seen.get(key);
        if (first === undefined) seen.set(key, { id: thing.id, line });
        return first === undefined
          ? []
          : [twice(line, thing, text, path, `${first.id} (line ${first.line})`)];
      }),
    checkStanding: async (store, isInside) => {
      if (seen.size === 0) return [];
      const problems: Problem[] = [];
      for await (const terms of store.allTerms({}))
        for (const standing of terms) {
          if (isInside(standing.id)) continue;
          for (const [text, path] of labelsOf(standing)) {
            const mine = seen.get(keyOf(standing, text));
            if (mine === undefined) continue;
            const thing = { ...standing, id: mine.id } as Term;
            problems.push(twice(mine.line, thing, text, path.slice(0, 1), `${standing.id} of the store`));
          }
        }
      return problems;
    },
  };
}

const labelsOf = ({
  label,
  otherLabels = [],
}: Term): readonly (readonly [string, readonly (string | number)[]])[] => [
  [label, ["label"]],
  ...otherLabels.map((other, i) => [other, ["otherLabels", i]] as const),
];
const keyOf = ({ kind }: Term, text: string): string => `${kind} ${text.toLowerCase()}`;

const twice = (line: number, thing: Term, text: string, path: Problem["path"], other: string): Problem =>
  saidOfLine(
    line,
    thing.id,
    problem(
      "WRONG_FORMAT",
      `The ${thing.kind} ${other} is called “${text}” already; give one of the two another label, or make one term of them.`,
      path,
    ),
  );
