import type { ReportWords } from "./domain/report-words.ts";

const indented = (depth: number, line: string): string => `${"  ".repeat(depth)}${line}`;

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines.map((line) => indented(1, line))];
}

/** A report in words as plain text for a terminal, in the order of the screen; steps are indented below what they support. */
export function wordsAsText(words: ReportWords): string {
  const steps = (list: ReportWords["findings"][number]["steps"]) =>
    list.map((step) =>
      indented(
        step.depth + 1,
        `${step.says}${step.claim === undefined ? "" : ` [${step.claim}]`}${step.assumed ? " (assumed)" : ""}`,
      ),
    );
  const lines = [
    words.headline,
    ...words.reasons.map((reason) => indented(1, reason)),
    ...section(
      "Rule-outs",
      words.ruleOuts.flatMap((ruleOut) => [ruleOut.says, ...steps(ruleOut.steps)]),
    ),
    ...section(
      "Findings",
      words.findings.flatMap((finding) => [finding.says, ...steps(finding.steps)]),
    ),
    ...section(
      "Signs of alteration",
      words.signs.flatMap((sign) => [
        `${sign.says} [${sign.claim}]`,
        ...[...sign.because, ...sign.look].map((line) => indented(1, line)),
      ]),
    ),
    ...section(
      "Parts",
      words.parts.map((part) => part.says),
    ),
    ...section("What the graph does not know", words.gaps),
    ...section("Not searched", words.notSearched),
  ];
  return `${lines.join("\n")}\n`;
}
