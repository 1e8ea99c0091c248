import { checkCitations } from "./check-citations.ts";
import { STRENGTHS } from "./claim.ts";
import { type Draft, isBlank, isDraft, isId, unknownFields, wrong } from "./draft.ts";
import type { Problem } from "./problem.ts";
import type { ReferenceRow } from "./reference-row.ts";

const FIELDS = ["id", "table", "term", "quantity", "value", "from", "to", "unit"];
const ABOUT = ["strength", "scope", "citations", "note", "row"];
const DIMENSIONS = ["region", "form", "part"];

/**
 * Makes a row of a reference table of a draft that may hold anything, or says everything that is wrong with it. Whether
 * the terms and sources it names exist is for `checkReferenceRows`. Paths of problems start at the draft.
 */
export function makeReferenceRow(draft: unknown): ReferenceRow | readonly Problem[] {
  if (!isDraft(draft)) return [wrong("A row of a reference table", "an object with id, term, value", [])];
  const problems = [
    ...unknownFields(draft, [...FIELDS, ...ABOUT], "a row of a reference table"),
    ...checkId(draft),
    ...(isId(draft["term"]) ? [] : [wrong("The term of a row", "the id of what was measured", ["term"])]),
    ...(isBlank(draft["quantity"])
      ? [wrong("The quantity", "what was measured, in words", ["quantity"])]
      : []),
    ...checkMeasured(draft),
    ...optionalText(draft, "unit"),
    ...(STRENGTHS.some((strength) => strength === draft["strength"])
      ? []
      : [wrong("The strength", `one of ${STRENGTHS.join(", ")}`, ["strength"])]),
    ...checkScope(draft["scope"]),
    ...checkCitations(draft["citations"], ["citations"]),
    ...optionalText(draft, "note"),
    ...optionalText(draft, "row"),
  ];
  return problems.length > 0 ? problems : (draft as unknown as ReferenceRow);
}

function checkId({ id, table }: Draft): readonly Problem[] {
  const known = isId(id) && isId(table) && id.startsWith(`${table}.`) && id.length > table.length + 1;
  return known
    ? []
    : [wrong("The id of a row", "the name of its table, a dot and a name of its own", ["id"])];
}

function checkMeasured({ value, from, to }: Draft): readonly Problem[] {
  if (from === undefined && to === undefined)
    return isNumber(value) || (typeof value === "string" && !isBlank(value))
      ? []
      : [wrong("The value", "a number, a text that is not blank, or left out beside from and to", ["value"])];
  if (value !== undefined)
    return [wrong("The value", "left out where there is a range from one number to another", ["value"])];
  return isNumber(from) && isNumber(to) && from < to
    ? []
    : [wrong("A range", "two numbers, from the lesser to the greater", ["from"])];
}

const isNumber = (value: unknown): value is number => Number.isFinite(value);

function optionalText(draft: Draft, field: string): readonly Problem[] {
  return draft[field] === undefined || !isBlank(draft[field])
    ? []
    : [wrong(`The field ${field}`, "a text, or left out", [field])];
}

function checkScope(scope: unknown): readonly Problem[] {
  if (scope === undefined) return [];
  if (!isDraft(scope)) return [wrong("The scope", "an object, or left out", ["scope"])];
  return [
    ...unknownFields(scope, DIMENSIONS, "a scope", ["scope"]),
    ...DIMENSIONS.filter((dimension) => scope[dimension] !== undefined && !isId(scope[dimension])).map(
      (dimension) => wrong(`The ${dimension} of the scope`, "the id of a term", ["scope", dimension]),
    ),
  ];
}
