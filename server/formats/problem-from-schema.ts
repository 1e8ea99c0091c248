import type { ErrorObject } from "ajv";
import { type Problem, problem } from "../domain/problem.ts";

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  array: "a list",
  object: "an object",
  integer: "a whole number",
  number: "a number",
  boolean: "true or false",
  null: "null",
};

const kindOf = (value: unknown): string =>
  KINDS[value === null ? "null" : Array.isArray(value) ? "array" : typeof value] ?? typeof value;

function shown(value: unknown): string {
  if (typeof value !== "string" && typeof value !== "number" && typeof value !== "boolean")
    return kindOf(value);
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

/** A JSON pointer (RFC 6901) as the steps it takes. */
const stepsOf = (pointer: string): (string | number)[] =>
  pointer
    .split("/")
    .slice(1)
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"))
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** What is wrong and what to do, as the rest of a sentence that begins with what it is about. */
function complaint({ keyword, params, data, parentSchema }: ErrorObject): string {
  const limit: unknown = params["limit"];
  switch (keyword) {
    case "required":
      return `lacks "${params["missingProperty"]}"; add it`;
    case "additionalProperties": {
      const known = Object.keys((parentSchema?.["properties"] as object | undefined) ?? {}).join(", ");
      return `has "${params["additionalProperty"]}", which the format does not know; take it out or use one of ${known}`;
    }
    case "type":
      return `has to be ${KINDS[String(params["type"])] ?? params["type"]}, and is ${shown(data)}`;
    case "enum":
      return `has to be one of ${(params["allowedValues"] as unknown[]).join(", ")}, and is ${shown(data)}`;
    case "const":
      return `has to be ${JSON.stringify(params["allowedValue"])}, and is ${shown(data)}`;
    case "pattern":
      return `is ${shown(data)}, which is not of the form wanted here: ${parentSchema?.["description"] ?? params["pattern"]}`;
    case "minLength":
      return "is empty; write something";
    case "maxLength":
      return `is longer than ${limit} characters; shorten it`;
    case "minItems":
      return `has too few entries; ${limit} are wanted`;
    case "maxItems":
      return `has more than ${limit} entries; leave some out`;
    case "minimum":
      return `has to be ${limit} or more, and is ${shown(data)}`;
    case "maximum":
      return `has to be ${limit} or less, and is ${shown(data)}`;
    default:
      return `is not as the format wants it (${keyword})`;
  }
}

/** What a sentence is about: the last step of the place. */
function subjectOf(steps: readonly (string | number)[]): string {
  const last = steps.at(-1);
  if (last === undefined) return "The top level";
  if (typeof last === "string") return `"${last}"`;
  const list = steps.findLast((step) => typeof step === "string");
  return `Entry ${last + 1} of ${list === undefined ? "the list" : `"${list}"`}`;
}

/** One failed rule of a schema as a problem: the place, what is wrong there, what to do. */
export function problemFromSchema(error: ErrorObject): Problem {
  const steps = stepsOf(error.instancePath);
  if (/^(const|enum)$/.test(error.keyword) && error.instancePath === "/version") {
    const read = [error.params["allowedValue"] ?? error.params["allowedValues"]].flat().join(", ");
    return problem(
      "OTHER_VERSION",
      `It is of version ${shown(error.data)}, and this program reads version ${read}; use the program that wrote it, or a newer one.`,
      steps,
    );
  }
  return problem("WRONG_FORMAT", `${subjectOf(steps)} ${complaint(error)}.`, steps);
}
