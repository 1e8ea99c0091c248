import type { Gap, NotSearched } from "../../domain/report.ts";
import { capitalise, listInWords } from "./list-in-words.ts";
import { type ReportReader, subjectInWords } from "./report-reader.ts";

/** Something the graph does not know, as a sentence that says what source would help. */
export function gapInWords(gap: Gap, reader: ReportReader): string {
  const term = gap.term === undefined ? "this" : reader.labelOf(gap.term);
  const finding = gap.finding === undefined ? undefined : reader.findingOf(gap.finding);
  const isItsOwn = finding === undefined || finding.feature === gap.term;
  const bearing = isItsOwn ? "" : ` It bears on ${subjectInWords(finding, reader)}.`;
  switch (gap.kind) {
    case "undated-term":
      return `${capitalise(term)}: no source dates it.${bearing}`;
    case "unknown-end":
      return `${capitalise(term)}: no source says when it ended.${bearing}`;
    case "no-claim-here":
      return `${capitalise(term)}: dated elsewhere, but not for this place, form or part.${bearing}`;
    case "open-list":
      return `${capitalise(term)}: the ways to make it are not all listed, so it bounds nothing.${bearing}`;
    case "chain-cut":
      return `${capitalise(term)}: the chain goes further than was followed.${bearing}`;
  }
}

const WHY: Readonly<Record<NotSearched["why"], string>> = {
  "too-many-proofs":
    "Not all rule-outs are known of {}: there are more ways to prove them than were followed.",
  "too-many-rule-outs":
    "Not all rule-outs are known of {}: there are more ways in which they clash than were followed.",
  "claims-given-up": "Not counted among the rule-outs of {}: giving up a claim can bring an older one back.",
};

/** A residue that was not searched, named. */
export function notSearchedInWords(residue: NotSearched, reader: ReportReader): string {
  const findings = residue.findings.flatMap((finding) => reader.findingOf(finding) ?? []);
  const what = listInWords(findings.map((finding) => subjectInWords(finding, reader)));
  return WHY[residue.why].replace("{}", () => (what === "" ? "some findings" : what));
}
