import { checkLooking } from "./check-looking.ts";
import { isBlank, isId, wrong } from "./draft.ts";
import type { Problem } from "./problem.ts";
import { TERM_KINDS, type Term } from "./term.ts";

/** What is wrong with a term by itself. */
export function checkTerm(term: Term): readonly Problem[] {
  return [
    ...(isId(term.id) ? [] : [wrong("The id of a term", "letters, digits, dot, hyphen, underscore", ["id"])]),
    ...(TERM_KINDS.includes(term.kind)
      ? []
      : [wrong("The kind of a term", `one of ${TERM_KINDS.join(", ")}`, ["kind"])]),
    ...(isBlank(term.label) ? [wrong("The label of a term", "a name that people read", ["label"])] : []),
    ...(term.merged && term.broader === undefined
      ? [wrong("The broader term of one that was merged", "the term that stands for both", ["broader"])]
      : []),
    ...(term.looking === undefined ? [] : checkLooking(term.looking)),
    ...(term.looking !== undefined && term.kind !== "feature"
      ? [
          wrong("Looking notes", "left out but on a feature: nothing else is looked for on a piece", [
            "looking",
          ]),
        ]
      : []),
  ];
}
