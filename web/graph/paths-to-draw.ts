import type { ClaimId, SourceId, TermId } from "#server/domain/ids.ts";
import { locatorBeside } from "#server/domain/locator-beside.ts";
import type { Finding, Path, Report, SilenceReason } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { isAllYears, yearsFromJson } from "#server/domain/years.ts";
import { sayYears } from "#web/shared/words/say-years.ts";
import type { PathToDraw } from "./path-picture.ts";

/** Names for what a path passes. */
export interface NamesForPaths {
  readonly labelOf: (term: TermId) => string;
  /** The source as a line of text. */
  readonly sourceText: (source: SourceId) => string | undefined;
  /** Whether somebody doubts a claim openly. */
  readonly isDisputed?: (claim: ClaimId) => boolean;
}

const SILENCE: Readonly<Record<SilenceReason, string>> = {
  defeated: "an exception holds",
  "out-of-scope": "no claim for this place, form or part",
  overridden: "a nearer claim stands instead",
  "open-list": "other ways are not listed",
  "unknown-end": "its end is not known",
  undated: "no date known",
  "looked-for-absent": "looked for, not there",
  "could-not-be-seen": "could not be seen",
};

function verdictOf(path: Path): PathToDraw["verdict"] {
  switch (path.label) {
    case "contradictory":
      return path.hardness === "practice" ? "unusual" : "against";
    case "consistent":
      return "for";
    case "silent":
      return "silent";
    case "way-excluded":
      return "excluded";
  }
}

function endLabel(path: Path): string {
  if (path.label === "silent") return `says nothing: ${SILENCE[path.reason ?? "undated"]}`;
  if (path.label !== "way-excluded") return sayYears(path.years);
  return isAllYears(yearsFromJson(path.years))
    ? "way excluded, by another of its steps"
    : `way excluded: ${sayYears(path.years)}`;
}

/** Where the date at the end of a path comes from, its basis where no source is named; and that a claim on it is disputed. */
function sourceOf(path: Path, { sourceText, isDisputed }: NamesForPaths): string | undefined {
  const cites = path.cites.filter((cite) => cite.claim === path.dated);
  const said = cites.map(({ source, locator, basis }) => {
    const text = source === undefined ? undefined : sourceText(source);
    return [text, locatorBeside(text ?? "", locator ?? ""), basis].filter(Boolean).join(", ");
  });
  const isDoubted =
    isDisputed !== undefined &&
    (path.via.some(isDisputed) || (path.dated !== undefined && isDisputed(path.dated)));
  if (isDoubted) said.push("rests on a claim that is disputed");
  return said.length === 0 ? undefined : said.join("; ");
}

/** The paths of one finding, or of all that have any, with names, in the order of the report. */
export function pathsToDraw(
  report: Report,
  words: ReportWords,
  names: NamesForPaths,
  only?: string,
): readonly PathToDraw[] {
  const findings: readonly Finding[] = report.findings.filter(
    (finding) => only === undefined || finding.id === only,
  );
  return findings.flatMap((finding) => {
    const said = words.findings.find((one) => one.id === finding.id)?.paths ?? [];
    return finding.paths.map((path, i) => {
      const source = sourceOf(path, names);
      return {
        finding: finding.id,
        terms: path.terms.map((id) => ({ id, label: names.labelOf(id) })),
        ...(path.dated === undefined ? {} : { end: path.dated }),
        endLabel: endLabel(path),
        years: path.years,
        verdict: verdictOf(path),
        says: said[i] ?? path.terms.map(names.labelOf).join(" → "),
        ...(source === undefined ? {} : { source }),
      };
    });
  });
}
