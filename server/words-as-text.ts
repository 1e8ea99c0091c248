import type { Hardness } from "./domain/claim.ts";
import type { Piece } from "./domain/examination.ts";
import { pickRuleOuts } from "./domain/pick-rule-outs.ts";
import type { Report, Sign } from "./domain/report.ts";
import type { ReportWords, StepInWords } from "./domain/report-words.ts";
import { speaksOfChange } from "./domain/speaks-of-change.ts";

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
 * each with the claim to look up or as assumed. A finding that is told as a reason is not told again.
 */
export function wordsAsText(
  report: Report,
  words: ReportWords,
  { title, invented, parts }: Piece,
  citations: readonly string[] = [],
): string {
  const labels = new Map(parts.map((part) => [part.id, part.label]));
  const ruleOutWords = new Map(words.ruleOuts.map((said) => [said.id, said]));
  const ruleOuts = (hardness: Hardness) => {
    const { told, following } = pickRuleOuts(report.ruleOuts, hardness);
    return [
      ...told.flatMap(({ id }) => {
        const said = ruleOutWords.get(id);
        return said === undefined ? [] : [said.says, ...said.steps.map(stepLine)];
      }),
      ...(following.length === 0
        ? []
        : [
            `${following.length} more that ${following.length === 1 ? "follows" : "follow"} from what is told already.`,
          ]),
    ];
  };
  const [cannotBe, unusual] = [ruleOuts("physical"), ruleOuts("practice")];
  const told = new Set([...cannotBe, ...unusual]);
  const findings = words.findings.filter(({ says }) => !told.has(says));
  const signs = (isWanted: (sign: Sign) => boolean) =>
    report.signs.flatMap((sign, at) => {
      const said = words.signs[at];
      if (said === undefined || !isWanted(sign)) return [];
      return [
        `${said.says} [${said.claim}]`,
        ...[...said.because, ...said.look].map((line) => indented(1, line)),
      ];
    });
  const lines = [
    `${title}${invented ? " (invented: no such object exists)" : ""}`,
    `Claimed: ${report.attribution.date}. Knowledge as of revision ${report.revision}.`,
    "",
    words.headline,
    ...words.reasons.map((reason) => indented(1, reason)),
    ...section("What rules it out", cannotBe),
    ...section("What would be unusual", unusual),
    ...section(
      findings.length < words.findings.length ? "Other findings" : "Findings",
      findings.flatMap(({ says, steps }) => [says, ...steps.map(stepLine)]),
    ),
    ...section("Signs of alteration", signs(speaksOfChange)),
    ...section(
      "Signs that a part is original",
      signs((sign) => !speaksOfChange(sign)),
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
  // Only what is named above is cited below.
  const above = lines.join("\n");
  const named = citations.filter((line) => above.includes(`[${line.split(":", 1)[0]}]`));
  return `${[...lines, ...section("Sources of the claims named above", named)].join("\n")}\n`;
}
