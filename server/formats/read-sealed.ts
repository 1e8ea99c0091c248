import type { SchemaObject } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import changesSchema from "../../docs/formats/changes.schema.json" with { type: "json" };
import checkpointSchema from "../../docs/formats/checkpoint.schema.json" with { type: "json" };
import dumpSchema from "../../docs/formats/dump.schema.json" with { type: "json" };
import keptReportSchema from "../../docs/formats/kept-report.schema.json" with { type: "json" };
import pieceSchema from "../../docs/formats/piece.schema.json" with { type: "json" };
import reportSchema from "../../docs/formats/report.schema.json" with { type: "json" };
import type { KeptReport } from "../domain/chronicle/kept-report.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Checkpoint } from "../domain/proof/checkpoint.ts";
import type { SharedChanges } from "../domain/sharing/shared-changes.ts";
import { problemFromSchema } from "./problem-from-schema.ts";

const ajv = new Ajv2020({ verbose: true, strict: true, strictRequired: false, strictTypes: false });
ajv.addSchema([pieceSchema, reportSchema, dumpSchema, checkpointSchema] as SchemaObject[]);

/** A reader of one signed format. Nothing is filled in: what is read is what was signed. */
function sealedReader<Sealed>(schema: SchemaObject, what: string) {
  const validate = ajv.getSchema(schema.$id ?? "") ?? ajv.compile(schema);
  return (value: unknown): Sealed | Problem => {
    if (validate(value)) return value as Sealed;
    const [error] = validate.errors ?? [];
    return (error && problemFromSchema(error)) ?? problem("WRONG_FORMAT", `This is no ${what}.`);
  };
}

/** Reads a value of the format docs/formats/checkpoint.schema.json, or says what is wrong with it. */
export const readCheckpoint = sealedReader<Checkpoint>(checkpointSchema, "checkpoint");
/** Reads a value of the format docs/formats/kept-report.schema.json, or says what is wrong with it. */
export const readKeptReport = sealedReader<KeptReport>(keptReportSchema, "signed report");
/** Reads a value of the format docs/formats/changes.schema.json, or says what is wrong with it. */
export const readSharedChanges = sealedReader<SharedChanges>(changesSchema, "file of changes");
