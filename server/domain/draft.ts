import { ID_PATTERN } from "./ids.ts";
import { type Problem, problem } from "./problem.ts";

/** An object of which nothing is known yet. */
export type Draft = Readonly<Record<string, unknown>>;

export const isDraft = (value: unknown): value is Draft =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export const isId = (value: unknown): value is string => typeof value === "string" && ID_PATTERN.test(value);

export const isBlank = (value: unknown): boolean => typeof value !== "string" || value.trim() === "";

/** The value if it is a list. */
export const listOf = (value: unknown): readonly unknown[] | undefined =>
  Array.isArray(value) ? (value as readonly unknown[]) : undefined;

/** Says that something is not what it has to be. */
export const wrong = (what: string, wanted: string, path: Problem["path"]): Problem =>
  problem("WRONG_FORMAT", `${what} must be ${wanted}.`, path);

const NONE: readonly Problem[] = [];

/** A problem for each field that is not among the known ones: a misspelt field would be lost in silence. */
export function unknownFields(
  draft: Draft,
  known: readonly string[],
  of: string,
  path: Problem["path"] = [],
): readonly Problem[] {
  const isUnknown = (field: string): boolean => !known.includes(field) && draft[field] !== undefined;
  const fields = Object.keys(draft);
  if (!fields.some(isUnknown)) return NONE;
  return fields
    .filter(isUnknown)
    .map((field) =>
      problem("WRONG_FORMAT", `There is no field ${field} in ${of}; use ${known.join(", ")}.`, [
        ...path,
        field,
      ]),
    );
}
