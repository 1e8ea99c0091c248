import type { SchemaObject } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import type { Problem } from "../domain/problem.ts";
import { problemFromSchema } from "./problem-from-schema.ts";

/** Problems told of one value; the rest are likely to follow from these. */
const MOST_PROBLEMS = 20;

/**
 * Makes a reader of one format from its JSON Schema (draft 2020-12). The reader gives the value with its defaults filled
 * in, or what is wrong with it, place by place; it leaves what it is given as it is.
 */
export function readBySchema<Value>(schema: SchemaObject): (value: unknown) => Value | readonly Problem[] {
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    useDefaults: true,
    strict: true,
    strictRequired: false,
  });
  const validate = ajv.compile<Value>(schema);
  return (value) => {
    const read = structuredClone(value);
    if (validate(read)) return read;
    return (validate.errors ?? []).slice(0, MOST_PROBLEMS).map(problemFromSchema);
  };
}
