import { checkAlone } from "../domain/check-graph.ts";
import type { Standing } from "../domain/graph-view.ts";
import { ID_PATTERN } from "../domain/ids.ts";
import { makeClaim } from "../domain/make-claim.ts";
import { type Problem, problem } from "../domain/problem.ts";
import { checkImportLine, type ImportKind } from "../formats/check-import-line.ts";
import { findJson } from "../formats/find-json.ts";

/** One line of an import with its thing. */
export type ImportLine = Standing & { readonly line: number };

const KINDS: readonly string[] = ["term", "source", "claim"] satisfies ImportKind[];

/** A line that cannot be used, with its id if it has one. */
export interface RefusedLine {
  readonly id: string | undefined;
  readonly problems: readonly Problem[];
}

/** The thing of a line, or everything that is wrong with it by itself, told with the line, the id and the field. */
export function readImportLine(text: string, line: number): ImportLine | RefusedLine {
  const value = findJson(text) as Readonly<Record<string, unknown>> | null | undefined;
  const kind = value?.["kind"] as ImportKind;
  if (typeof value !== "object" || value === null || !KINDS.includes(kind))
    return { id: undefined, problems: [saidOfLine(line, undefined, noSuchLine())] };
  const thing = value[kind] as Standing["thing"];
  const id = findId(thing);
  const problems = findProblems(kind, value, thing);
  return problems.length > 0
    ? { id, problems: problems.map((found) => saidOfLine(line, id, found)) }
    : ({ kind, thing, line } as ImportLine);
}

/** The thing of a line that was looked at before; nothing if the file has been changed since, so that it is of no form. */
export function readAgain(text: string, line: number): ImportLine | undefined {
  if (text.trim() === "") return undefined;
  const value = findJson(text) as Readonly<Record<string, unknown>> | null | undefined;
  const kind = value?.["kind"] as ImportKind;
  if (!KINDS.includes(kind) || checkImportLine(kind, value).length > 0) return undefined;
  return { kind, thing: value?.[kind], line } as ImportLine;
}

const noSuchLine = (): Problem =>
  problem(
    "WRONG_FORMAT",
    "The line is not a JSON object with the kind term, source or claim and the thing under that name; correct it there.",
    ["kind"],
  );

/** A thing is looked at by its own rules only where it has the form that they take for granted; a claim may have any. */
function findProblems(kind: ImportKind, value: object, thing: Standing["thing"]): readonly Problem[] {
  if (kind === "claim") {
    const claim = makeClaim(thing);
    if (!("id" in claim)) return claim;
  }
  const ofForm = checkImportLine(kind, value).map((found) => ({
    ...found,
    path: found.path[0] === kind ? found.path.slice(1) : found.path,
  }));
  if (ofForm.length > 0 || kind === "claim") return ofForm;
  return checkAlone({ kind, thing } as Standing);
}

function findId(thing: unknown): string | undefined {
  const id = (thing as { readonly id?: unknown } | null | undefined)?.id;
  return typeof id === "string" && ID_PATTERN.test(id) ? id : undefined;
}

/** A problem said of its line: line, id and field stand before what is wrong and what to do. */
export function saidOfLine(line: number, id: string | undefined, { path, ...found }: Problem): Problem {
  const field = path.map((step, i) => (typeof step === "number" ? `[${step}]` : i === 0 ? step : `.${step}`));
  const place = [
    `line ${line}`,
    ...(id === undefined ? [] : [id]),
    ...(path.length === 0 ? [] : [`field ${field.join("")}`]),
  ];
  return { ...found, path: [line, ...path], message: `${place.join(", ")}: ${found.message}` };
}
