import type { TermId } from "#server/domain/ids.ts";
import type { Finding, Path, Report, SilenceReason } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { sayYears } from "#web/shared/words/say-years.ts";
import type { PathToDraw } from "./path-picture.ts";

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
  return path.label === "way-excluded" ? `way excluded: ${sayYears(path.years)}` : sayYears(path.years);
}

/** The paths of one finding, or of all that have any, with names, in the order of the report. */
export function pathsToDraw(
  report: Report,
  words: ReportWords,
  labelOf: (term: TermId) => string,
  only?: string,
): readonly PathToDraw[] {
  const findings: readonly Finding[] = report.findings.filter(
    (finding) => only === undefined || finding.id === only,
  );
  return findings.flatMap((finding) => {
    const said = words.findings.find((one) => one.id === finding.id)?.paths ?? [];
    return finding.paths.map((path, i) => ({
      finding: finding.id,
      terms: path.terms.map((id) => ({ id, label: labelOf(id) })),
      ...(path.dated === undefined ? {} : { end: path.dated }),
      endLabel: endLabel(path),
      years: path.years,
      verdict: verdictOf(path),
      says: said[i] ?? path.terms.map(labelOf).join(" → "),
    }));
  });
}
