import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { ReportWords, StepInWords } from "#server/domain/report-words.ts";
import type { Term } from "#server/domain/term.ts";
import { readPiece } from "#server/formats/read-piece.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type Examined, examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";

const folder = fileURLToPath(new URL(".", import.meta.url));

/** Names of all golden cases: folders with a piece in them. */
export const caseNames = (): string[] =>
  readdirSync(folder)
    .filter((name) => existsSync(`${folder}${name}/piece.json`))
    .sort();

export const caseFile = (name: string, file: string): string => `${folder}${name}/${file}`;

const read = (name: string, file: string): string => readFileSync(caseFile(name, file), "utf8");

/** Examines the piece of a case on the graph of the case, through the store and the use case. */
export async function runCase(name: string): Promise<Examined> {
  const graph = JSON.parse(read(name, "graph.json")) as { terms: Term[]; claims: Claim[] };
  const change: Change = [
    ...graph.terms.map((after) => ({ kind: "term" as const, after })),
    ...graph.claims.map((after) => ({ kind: "claim" as const, after })),
  ];
  const store = openMemoryStore();
  const committed = await store.commit({ change, by: "case", at: "2026-01-01T00:00:00Z", message: name });
  if (isProblem(committed)) throw new Error(committed.message);
  const piece = readPiece(JSON.parse(read(name, "piece.json")));
  if (!("title" in piece)) throw new Error(JSON.stringify(piece));
  const answer = await examinePiece({ store }, piece);
  if (isRefusal(answer)) throw new Error(answer.refused[0].message);
  return answer;
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

/** The report as kept beside the case: canonical JSON read back and indented, so that a change shows line by line. */
export const reportAsLines = (report: Examined["report"]): string =>
  `${JSON.stringify(JSON.parse(canonicalJson(report)), undefined, 1)}\n`;
