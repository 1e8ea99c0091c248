import type { Part } from "#server/domain/examination.ts";
import type { Finding, Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { speaksOfChange } from "#server/domain/speaks-of-change.ts";
import { briefSign } from "./brief-sign.ts";
import { findGap } from "./find-gap.ts";
import type { Glossary } from "./glossary.ts";
import type { SignInRow, StripGroup, StripMark, StripRow, WayInRow } from "./strip-row.ts";

/** Words for what was claimed of the whole, which have no part. */
const CLAIMED = "What is claimed";
const SEEN_AS = { present: "", absent: "no ", unseen: "" } as const;

function markOf(finding: Finding, signs: readonly SignInRow[]): StripMark {
  if (finding.label === "contradictory")
    return finding.hardness === "physical" ? "against-hard" : "against-soft";
  if (signs.some((sign) => !sign.isSetAside && sign.isOfChange)) return "sign";
  if (finding.label === "consistent") return "for";
  if (signs.some((sign) => !sign.isSetAside)) return "sign-of-age";
  return signs.length > 0 ? "sign-set-aside" : "silent";
}

function waysOf(finding: Finding, glossary: Glossary): WayInRow[] {
  return finding.ways.flatMap((block) =>
    block.ways.map((way) => ({
      label: way.terms.map(glossary.labelOf).join(" and "),
      isOpen: way.open,
      years: way.years,
    })),
  );
}

/** Signs of an observation, each with its sentences; signs and their words stand in the same order. */
function signsOf(finding: Finding, report: Report, words: ReportWords): SignInRow[] {
  return report.signs.flatMap((sign) => {
    if (sign.observation !== finding.observation) return [];
    const said = words.signs.find((one) => one.observation === sign.observation && one.claim === sign.claim);
    if (!said) return [];
    return [
      {
        claim: sign.claim,
        says: said.says,
        brief: briefSign(sign),
        isSetAside: sign.standing === "set-aside",
        isOfChange: speaksOfChange(sign),
        because: said.because,
        look: said.look,
      },
    ];
  });
}

function makeRow(finding: Finding, report: Report, words: ReportWords, glossary: Glossary): StripRow {
  const said = words.findings.find((one) => one.id === finding.id);
  const signs = signsOf(finding, report, words);
  const gap = findGap(finding, report.attribution.years);
  return {
    id: finding.id,
    ...(finding.observation === undefined ? {} : { observation: finding.observation }),
    ...(finding.part === undefined ? {} : { part: finding.part }),
    label: SEEN_AS[finding.seen] + glossary.labelOf(finding.feature),
    mark: markOf(finding, signs),
    isSilent: finding.label === "silent",
    ...(finding.hardness === undefined ? {} : { hardness: finding.hardness }),
    possible: finding.possible.outer,
    usual: finding.usual.outer,
    ...(gap ? { gap } : {}),
    short: said?.short ?? "",
    says: said?.says ?? "",
    steps: said?.steps ?? [],
    paths: said?.paths ?? [],
    pathCount: finding.pathCount,
    ways: waysOf(finding, glossary),
    signs,
    setAside: finding.setAside,
    voidIf: finding.voidIf,
  };
}

/**
 * The rows of a report, grouped by part in the order of the piece's parts; what is claimed comes last.
 * Within a part the order of the report stays: the contradictory first.
 */
export function makeStripGroups(
  report: Report,
  words: ReportWords,
  parts: readonly Part[],
  glossary: Glossary,
): readonly StripGroup[] {
  const rows = report.findings.map((finding) => makeRow(finding, report, words, glossary));
  const groups: StripGroup[] = parts.map((part) => ({
    id: part.id,
    part: part.id,
    label: part.label,
    rows: rows.filter((row) => row.part === part.id),
  }));
  groups.push({ id: "claimed", label: CLAIMED, rows: rows.filter((row) => row.part === undefined) });
  return groups.filter((group) => group.rows.length > 0);
}
