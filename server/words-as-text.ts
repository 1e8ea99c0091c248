import type { Piece } from "./domain/examination.ts";
import type { Report } from "./domain/report.ts";
import type { ReportWords, StepInWords } from "./domain/report-words.ts";

const indented = (depth: number, line: string): string => `${"  ".repeat(depth)}${line}`;

function stepLine({ depth, says, claim, assumed }: StepInWords): string {
  return indented(
    depth + 1,
    `${says}${claim === undefined ? "" : ` [${claim}]`}${assumed ? " (assumed)" : ""}`,
  );
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines.map((line) => indented(1, line))];
}

/**
 * A report in words as plain text for a terminal, in the order of the screen; steps are indented below what they support,
 * each with the claim to look up or as assumed.
 */
export function wordsAsText(report: Report, words: ReportWords, { title, invented, parts }: Piece): string {
  const hardness = new Map(report.ruleOuts.map((ruleOut) => [ruleOut.id, ruleOut.hardness]));
  const labels = new Map(parts.map((part) => [part.id, part.label]));
  const ruleOuts = (wanted: "physical" | "practice") =>
    words.ruleOuts
      .filter(({ id }) => hardness.get(id) === wanted)
      .flatMap(({ says, steps }) => [says, ...steps.map(stepLine)]);
  const lines = [
    `${title}${invented ? " (invented: no such object exists)" : ""}`,
    `Claimed: ${report.attribution.date}. Knowledge as of revision ${report.revision}.`,
    "",
    words.headline,
    ...words.reasons.map((reason) => indented(1, reason)),
    ...section("What rules it out", ruleOuts("physical")),
    ...section("What would be unusual", ruleOuts("practice")),
    ...section(
      "Findings",
      words.findings.flatMap(({ says, steps }) => [says, ...steps.map(stepLine)]),
    ),
    ...section(
      "Signs of alteration",
      words.signs.flatMap(({ says, claim, because, look }) => [
        `${says} [${claim}]`,
        ...[...because, ...look].map((line) => indented(1, line)),
      ]),
    ),
    ...section(
      "Parts",
      words.parts.map(({ part, says }) => `${labels.get(part) ?? part}: ${says}`),
    ),
    ...section("What the graph does not know", words.gaps),
    ...section("Not searched", words.notSearched),
    "",
    "A finding is evidence to weigh, not a certificate or a valuation.",
  ];
  return `${lines.join("\n")}\n`;
}
