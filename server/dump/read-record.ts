import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import dumpSchema from "../../docs/formats/dump.schema.json" with { type: "json" };
import pieceSchema from "../../docs/formats/piece.schema.json" with { type: "json" };
import { rememberText } from "../chain/change-text.ts";
import { canonicalJson } from "../domain/canonical-json.ts";
import { DUMP_FORMAT, type DumpRecord } from "../domain/dump.ts";
import { type Problem, problem } from "../domain/problem.ts";
import { findJson } from "../formats/find-json.ts";
import { problemFromSchema } from "../formats/problem-from-schema.ts";

const ajv = new Ajv2020({ verbose: true, strict: true, strictRequired: false, strictTypes: false });
ajv.addSchema(pieceSchema).addSchema(dumpSchema);

/** The part of the schema for each kind of line. */
const DEFINITIONS: Readonly<Record<string, string>> = {
  header: "header",
  revision: "revisionRecord",
  examination: "examinationRecord",
  card: "cardRecord",
  write: "writeRecord",
  trailer: "trailer",
};

/**
 * Reads one line of a dump, without its line feed; `number` counts from 1. Refuses `WRONG_FORMAT` (not a dump at all),
 * `OTHER_VERSION` or `DAMAGED_DUMP`, with the number and the place in the line as path.
 */
export function readRecord(line: string, number: number): DumpRecord | Problem {
  const damaged = (what: string, path: Problem["path"] = []): Problem =>
    problem(
      "DAMAGED_DUMP",
      `Line ${number} of the dump ${what} Nothing was restored; use an undamaged copy.`,
      [number, ...path],
    );
  const value = findJson(line);
  if (number === 1 && kindOf(value) !== "header")
    return problem(
      "WRONG_FORMAT",
      `The file is not a dump: its first line is not the header of ${DUMP_FORMAT}. Name a file written by npm run dump.`,
      [1],
    );
  const validate = validatorOf(kindOf(value));
  if (validate === undefined) return damaged("is not a record of a dump.");
  if (!validate(value)) {
    const [error] = validate.errors ?? [];
    const wrong = error && problemFromSchema(error);
    if (wrong?.code === "OTHER_VERSION") return { ...wrong, path: [number, ...wrong.path] };
    return damaged(`is not as docs/formats/dump.schema.json wants it: ${wrong?.message}`, wrong?.path);
  }
  const record = value as DumpRecord;
  if (canonicalJson(record) !== line) return damaged("was changed: it is not canonical JSON.");
  if (record.kind === "revision") {
    const { change, ...rest } = record;
    const end = line.length - canonicalJson(rest).length;
    rememberText(change, line.slice(BEFORE_CHANGE.length, end));
  }
  return record;
}

/** How the line of a revision begins. After the change comes a comma, where the rest by itself has a brace. */
const BEFORE_CHANGE = '{"change":';

function validatorOf(kind: string): ValidateFunction | undefined {
  const name = Object.hasOwn(DEFINITIONS, kind) ? DEFINITIONS[kind] : undefined;
  return name === undefined ? undefined : ajv.getSchema(`scribeline:dump#/$defs/${name}`);
}

function kindOf(value: unknown): string {
  const kind = (value as { readonly kind?: unknown } | null | undefined)?.kind;
  return typeof kind === "string" ? kind : "";
}
