import type { Claim } from "../../domain/claim.ts";
import type { Piece } from "../../domain/examination.ts";
import type { ClaimId, PartId, TermId } from "../../domain/ids.ts";
import type { AttributionReading, Finding, Place, Report } from "../../domain/report.ts";
import { decapitalise } from "./list-in-words.ts";

/** What the words are made from: the report, the piece it is about, and the names of what both point to. */
export interface ReportReader {
  readonly report: Report;
  readonly labelOf: (term: TermId) => string;
  readonly claimOf: (claim: ClaimId) => Claim | undefined;
  /** "drawer bottoms", to follow "the". */
  readonly partOf: (part: PartId) => string;
  readonly findingOf: (finding: string) => Finding | undefined;
  /** The claimed years as a phrase: "1765 to 1775". */
  readonly claimed: string;
}

export interface Names {
  readonly labelOf: (term: TermId) => string;
  readonly claimOf: (claim: ClaimId) => Claim | undefined;
}

/** Joins a report, its piece and the names of terms and claims for the files that word it. */
export function readReport(report: Report, piece: Piece, names: Names): ReportReader {
  const parts = new Map(piece.parts.map((part) => [part.id, decapitalise(part.label)]));
  const findings = new Map(report.findings.map((finding) => [finding.id, finding]));
  return {
    report,
    ...names,
    partOf: (part) => parts.get(part) ?? part,
    findingOf: (finding) => findings.get(finding),
    claimed: claimedInWords(report.attribution),
  };
}

/** The claimed years as a phrase: "1765 to 1775"; the date as given where one end is open. */
export function claimedInWords({ date, years: [first, last] }: AttributionReading): string {
  if (first === null || last === null) return date;
  return first === last ? `${first}` : `${first} to ${last}`;
}

/** What a finding is about, to open a sentence or stand in one: "circular-saw marks on the drawer bottoms". */
export function subjectInWords(finding: Finding, reader: ReportReader): string {
  const feature = reader.labelOf(finding.feature);
  if (finding.part !== undefined) return `${feature} on the ${reader.partOf(finding.part)}`;
  const role = {
    "attr.form": "the claimed form",
    "attr.style": "the claimed style",
    "attr.maker": "the claimed maker",
  };
  const claimedAs = role[finding.id as keyof typeof role];
  return claimedAs === undefined ? feature : `${claimedAs} (${feature})`;
}

/** "Boston", "elsewhere in New England", "any place". */
export function placeInWords(place: Place, reader: ReportReader): string {
  if (place.region === null) return place.elsewhere ? "a place no source names" : "any place";
  return place.elsewhere ? `elsewhere in ${reader.labelOf(place.region)}` : reader.labelOf(place.region);
}
