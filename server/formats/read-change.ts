import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import dumpSchema from "../../docs/formats/dump.schema.json" with { type: "json" };
import pieceSchema from "../../docs/formats/piece.schema.json" with { type: "json" };
import type { Change, Edit } from "../domain/change.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import { type Problem, problem } from "../domain/problem.ts";
import { problemFromSchema } from "./problem-from-schema.ts";

/** Problems told of one change; the rest are likely to follow from these. */
const MOST_PROBLEMS = 20;

const ajv = new Ajv2020({ verbose: true, strict: true, strictRequired: false, strictTypes: false });
ajv.addSchema(pieceSchema).addSchema(dumpSchema);
const validate = ajv.getSchema("scribeline:dump#/$defs/edit") as ValidateFunction<Edit>;

/** Reads a change of the graph, edit by edit as docs/formats/dump.schema.json wants them, or says what is wrong, place by place. */
export function readChange(value: unknown): Change | readonly Problem[] {
  if (!Array.isArray(value)) return [problem("WRONG_FORMAT", "A change has to be a list of edits.", [])];
  if (isDeeperThan(value, DEEPEST))
    return [problem("WRONG_FORMAT", `The change is nested deeper than ${DEEPEST} levels; no edit is.`, [])];
  const [edits, told]: [Edit[], Problem[]] = [[], []];
  const seen = new Set<string>();
  for (const [i, each] of value.entries()) {
    if (told.length >= MOST_PROBLEMS) break;
    if (!validate(each)) {
      // The first says what is wrong; that a branch of the schema does not hold follows from it.
      const [error] = validate.errors ?? [];
      if (error) told.push(at(i, problemFromSchema(error)));
      continue;
    }
    const id = idOfEdit(each);
    if (id === "") told.push(at(i, problem("WRONG_FORMAT", "It has neither before nor after; add one.")));
    else if (seen.has(id))
      told.push(at(i, problem("DUPLICATE_ID", `It is the second of ${id}; make one of the two.`)));
    seen.add(id);
    edits.push(each);
  }
  return told.length > 0 ? told.slice(0, MOST_PROBLEMS) : edits;
}

/** Levels of lists and objects: an edit needs far fewer. */
const DEEPEST = 32;

const isDeeperThan = (value: unknown, levels: number): boolean =>
  typeof value === "object" &&
  value !== null &&
  (levels === 0 || Object.values(value).some((inner) => isDeeperThan(inner, levels - 1)));

const at = (i: number, one: Problem): Problem => ({
  ...one,
  message: `Edit ${i + 1}: ${one.message}`,
  path: [i, ...one.path],
});
