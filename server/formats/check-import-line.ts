import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import dumpSchema from "../../docs/formats/dump.schema.json" with { type: "json" };
import importSchema from "../../docs/formats/import.schema.json" with { type: "json" };
import pieceSchema from "../../docs/formats/piece.schema.json" with { type: "json" };
import type { Problem } from "../domain/problem.ts";
import { problemFromSchema } from "./problem-from-schema.ts";

export type ImportKind = "term" | "source" | "claim";

/** Problems told of one line; the rest are likely to follow from these. */
const MOST_PROBLEMS = 20;

const validators = (allErrors: boolean): Readonly<Record<ImportKind, ValidateFunction>> => {
  const ajv = new Ajv2020({
    allErrors,
    verbose: true,
    strict: true,
    strictRequired: false,
    strictTypes: false,
  });
  ajv.addSchema(pieceSchema).addSchema(dumpSchema).addSchema(importSchema);
  const of = (kind: ImportKind): ValidateFunction =>
    ajv.getSchema(`scribeline:import#/$defs/${kind}`) as ValidateFunction;
  return { term: of("term"), source: of("source"), claim: of("claim") };
};
const quick = validators(false);
let thorough: typeof quick | undefined;

/** Everything that keeps a line of an import from being as docs/formats/import.schema.json wants it. */
export function checkImportLine(kind: ImportKind, line: unknown): readonly Problem[] {
  if (quick[kind](line)) return [];
  thorough ??= validators(true);
  const validate = thorough[kind];
  validate(line);
  const told = new Map((validate.errors ?? []).map(problemFromSchema).map((found) => [found.message, found]));
  return [...told.values()].slice(0, MOST_PROBLEMS);
}
