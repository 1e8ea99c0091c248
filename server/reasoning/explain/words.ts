import type { Piece } from "../../domain/examination.ts";
import type { Report } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import { findingInWords } from "./finding-in-words.ts";
import { gapInWords, notSearchedInWords } from "./gap-in-words.ts";
import { headline, reasons } from "./headline.ts";
import { partInWords } from "./part-in-words.ts";
import { type Names, readReport } from "./report-reader.ts";
import { ruleOutInWords } from "./rule-out-in-words.ts";
import { signInWords } from "./sign-in-words.ts";

/**
 * A report in sentences. Everything said follows from the report alone; the piece gives the names of its parts, and
 * `names` the labels of terms and the claims to quote. Sentences stand only in this folder.
 */
export function reportInWords(report: Report, piece: Piece, names: Names): ReportWords {
  const reader = readReport(report, piece, names);
  return {
    headline: headline(reader),
    reasons: reasons(reader),
    findings: report.findings.map((finding) => findingInWords(finding, reader)),
    ruleOuts: report.ruleOuts.map((ruleOut) => ruleOutInWords(ruleOut, reader)),
    signs: report.signs.map((sign) => signInWords(sign, reader)),
    parts: report.parts.map((part) => partInWords(part, reader)),
    gaps: report.gaps.map((gap) => gapInWords(gap, reader)),
    notSearched: report.notSearched.map((residue) => notSearchedInWords(residue, reader)),
  };
}
