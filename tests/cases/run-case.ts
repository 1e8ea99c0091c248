import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { ReportWords, StepInWords } from "#server/domain/report-words.ts";
import type { Term } from "#server/domain/term.ts";
import type { Weighing } from "#server/domain/weighing/weighing.ts";
import type { WeighingWords } from "#server/domain/weighing/weighing-words.ts";
import { readPiece } from "#server/formats/read-piece.ts";
import type { Store } from "#server/ports/store.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type Examined, examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { weighPiece } from "#server/use-cases/ask/weigh-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { weighHere } from "#server/weigher/weigh-here.ts";
import type { Expected } from "./expected.ts";

const folder = fileURLToPath(new URL(".", import.meta.url));

/** Names of all golden cases: folders with a piece in them. */
export const caseNames = (): string[] =>
  readdirSync(folder)
    .filter((name) => existsSync(`${folder}${name}/piece.json`))
    .sort();

export const caseFile = (name: string, file: string): string => `${folder}${name}/${file}`;

const read = (name: string, file: string): string => readFileSync(caseFile(name, file), "utf8");

/** Whether a case stands on the seed graph; the others bring a small graph of their own. */
export const isOnSeed = (name: string): boolean => !existsSync(caseFile(name, "graph.json"));

export const readExpected = (name: string): Expected => JSON.parse(read(name, "expected.json")) as Expected;

export interface CaseAnswer extends Examined {
  /** Of cases on the seed graph: all stages but what to look at next. */
  readonly weighed?: { readonly weighing: Weighing; readonly words: WeighingWords };
}

/** Examines the piece of a case on the graph of the case, through the store and the use case; on the seed graph weighs it too. */
export async function runCase(name: string): Promise<CaseAnswer> {
  const piece = readPiece(JSON.parse(read(name, "piece.json")));
  if (!("title" in piece)) throw new Error(JSON.stringify(piece));
  const store = await (isOnSeed(name) ? seeded() : storeOf(graphOf(name)));
  const answer = await examinePiece({ store }, piece);
  if (isRefusal(answer)) throw new Error(answer.refused[0].message);
  if (!isOnSeed(name)) return answer;
  const stages = ["mends", "origins", "dates", "weights", "sensitivity", "rivals"] as const;
  const weighed = await weighPiece({ store, weigher: weighHere }, piece, { stages });
  if (isRefusal(weighed)) throw new Error(weighed.refused[0].message);
  return { ...answer, weighed };
}

function graphOf(name: string): Change {
  const graph = JSON.parse(read(name, "graph.json")) as { terms: Term[]; claims: Claim[] };
  return [
    ...graph.terms.map((after) => ({ kind: "term" as const, after })),
    ...graph.claims.map((after) => ({ kind: "claim" as const, after })),
  ];
}

async function storeOf(change: Change): Promise<Store> {
  const store = openMemoryStore();
  const committed = await store.commit({ change, by: "case", at: "2026-01-01T00:00:00Z", message: "case" });
  if (isProblem(committed)) throw new Error(committed.message);
  return store;
}

let seed: Promise<Store> | undefined;
/** One store with the seed graph for all cases. */
function seeded(): Promise<Store> {
  seed ??= readSeed(fileURLToPath(new URL("../../seed-data", import.meta.url))).then((found) => {
    if (isProblem(found)) throw new Error(found.message);
    return storeOf(found.change);
  });
  return seed;
}

const stepLine = (step: StepInWords): string =>
  `${"  ".repeat(step.depth + 2)}${step.says}${step.claim === undefined ? "" : ` [${step.claim}]`}`;

/** The words of a report as plain lines, for review. */
export function wordsAsLines(words: ReportWords): string {
  const lines = [
    words.headline,
    ...words.reasons.map((reason) => `  because: ${reason}`),
    ...words.findings.flatMap((finding) => [
      `${finding.id}: ${finding.says} (${finding.short})`,
      ...finding.steps.map(stepLine),
      ...finding.paths.map((path) => `    path: ${path}`),
    ]),
    ...words.ruleOuts.map((ruleOut) => `rules out ${ruleOut.id}: ${ruleOut.says}`),
    ...words.signs.flatMap((sign) => [
      `sign: ${sign.says}`,
      ...[...sign.because, ...sign.look].map((line) => `    ${line}`),
    ]),
    ...words.parts.map(({ part, says }) => `part ${part}: ${says}`),
    ...words.gaps.map((gap) => `not known: ${gap}`),
    ...words.notSearched,
  ];
  return `${lines.join("\n")}\n`;
}

/** The words of a weighing as plain lines, for review. */
export function weighingAsLines(words: WeighingWords): string {
  const lines = [
    words.headline ?? "",
    ...(words.reasons ?? []).map((reason) => `  because: ${reason}`),
    ...(words.dependsOn ?? []).map((what) => `  depends on: ${what}`),
    ...(words.mends ?? []).flatMap(({ says, perPart, proved, moved }) => [
      `mends: ${says} ${proved}`,
      ...perPart.flatMap((part) => [
        `  ${part.says}`,
        ...part.options.map((option) => `    ${option.price}: ${option.says}`),
      ]),
      ...(moved === undefined ? [] : [`  or: ${moved}`]),
    ]),
    ...(words.origins ?? []).map((line) => `origins: ${line}`),
    ...(words.parts ?? []).map(({ says, when }) => `part: ${says} ${when}`),
    ...(words.rivals ?? []).map(({ name, says }) => `rival: ${name}: ${says}`),
    ...words.missing,
  ];
  return `${lines.join("\n")}\n`;
}

/** The report as kept beside the case: canonical JSON read back and indented, so that a change shows line by line. */
export const reportAsLines = (report: Examined["report"]): string =>
  `${JSON.stringify(JSON.parse(canonicalJson(report)), undefined, 1)}\n`;
