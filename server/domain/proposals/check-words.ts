import { type Problem, problem } from "../problem.ts";

/** Characters of the title, of why, of a reason and of a remark; edits of one change. */
export const LONGEST_TITLE = 200;
export const LONGEST_TEXT = 5000;
export const MOST_EDITS = 500;

/** Whether a text is short enough to be kept. */
export function checkLength(field: string, text: string, longest: number): readonly Problem[] {
  const { length } = [...text];
  return length <= longest
    ? []
    : [
        problem(
          "TOO_LARGE",
          `"${field}" has ${length} characters, and at most ${longest} are kept; shorten it.`,
          [field],
        ),
      ];
}

/** What a proposal says of itself in its maker's words, and how much it changes. */
export const checkWords = ({
  title = "",
  why = "",
  change = [],
}: {
  readonly title?: string;
  readonly why?: string;
  readonly change?: readonly unknown[];
}): readonly Problem[] => [
  ...checkLength("title", title, LONGEST_TITLE),
  ...checkLength("why", why, LONGEST_TEXT),
  ...(change.length <= MOST_EDITS
    ? []
    : [
        problem(
          "TOO_LARGE",
          `The change has ${change.length} edits, and at most ${MOST_EDITS} are decided on at once; divide it.`,
          ["change"],
        ),
      ]),
];
