import { type Problem, problem } from "../../../domain/problem.ts";
import {
  CITATION_FIELDS,
  COMMON_FIELDS,
  FIELDS_OF_RELATION,
} from "../../../domain/proposals/form/claim-fields.ts";
import { FIELDS_OF_SOURCE } from "../../../domain/proposals/form/source-of-fields.ts";

/** Columns that a batch of claims can have. */
export const COLUMNS: readonly string[] = [
  ...new Set([
    ...COMMON_FIELDS,
    ...Object.values(FIELDS_OF_RELATION).flat(),
    ...CITATION_FIELDS,
    ...FIELDS_OF_SOURCE,
  ]),
].filter((name) => name !== "status");

/** The field of each column by its head, however it is written; or which heads are not known. */
export function readColumns(head: readonly string[]): readonly string[] | readonly Problem[] {
  const columns = head.map((cell) =>
    cell
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_]+/g, "-"),
  );
  const told = columns.flatMap((name, i) => {
    const shown = (head[i] as string).trim().slice(0, 40);
    if (!COLUMNS.includes(name))
      return [
        problem(
          "WRONG_FORMAT",
          shown === ""
            ? `Column ${i + 1} has no head; name it, or take it out.`
            : `There is no column “${shown}”; take it out, or name it one of ${COLUMNS.join(", ")}.`,
          [1, shown],
        ),
      ];
    return columns.indexOf(name) < i
      ? [problem("DUPLICATE_ID", `The column “${name}” stands there twice; keep one.`, [1, name])]
      : [];
  });
  if (told.length > 0) return told;
  return ["relation", "basis"].every((name) => columns.includes(name))
    ? columns
    : [
        problem(
          "WRONG_FORMAT",
          "A batch needs the columns relation and basis; name them in the first line.",
          [1, "relation"],
        ),
      ];
}
