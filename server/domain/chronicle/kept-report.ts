import type { Card, CardWrite } from "../card.ts";
import type { Piece } from "../examination.ts";
import type { ExaminationId } from "../ids.ts";
import type { Seal } from "../proof/seal.ts";
import type { Report } from "../report.ts";
import type { RevisionNumber } from "../revision.ts";

/** A report that somebody signed, with all that it follows from: it can be made again, to the same bytes. */
export interface KeptReport extends KeptReportFields, Seal {}

export interface KeptReportFields {
  readonly format: "scribeline/kept-report";
  readonly version: 1;
  readonly examination: ExaminationId;
  /** The version of the examination that was examined. */
  readonly record: number;
  /** The revision that it was examined on, and its hash (64 zeros for the empty graph). */
  readonly revision: RevisionNumber;
  readonly hash: string;
  /** ISO 8601 time in UTC. */
  readonly at: string;
  /** Id of the person who signed, which says nothing of who it is. */
  readonly by: string;
  readonly piece: Piece;
  readonly report: Report;
}

/** A kept report as it is listed, without the piece and the report. */
export type ListedReport = Omit<KeptReportFields, "piece" | "report" | "format"> & {
  readonly id: string;
  readonly title: string;
  readonly engine: string;
  /** SHA-256, hex, of the canonical JSON of the report and one line feed. */
  readonly sha256: string;
};

/** The kind of the cards that list kept reports, and of those that hold them. */
export const KEPT_REPORT_CARD = "kept-report";
export const KEPT_REPORT_BODY_CARD = "kept-report-body";

/** What a listing card says. */
export const listedReportOf = ({ id, body }: Card): ListedReport => ({
  ...(body as Omit<ListedReport, "id">),
  id,
});
/** What a holding card says. */
export const keptReportOf = ({ body }: Card): KeptReport => body as KeptReport;

/** The cards of a new kept report; those of one examination stand in the order of their times. */
export function keptReportWrites(suffix: string, kept: KeptReport, sha256: string): readonly CardWrite[] {
  const id = `${kept.examination}.${kept.at}-${suffix}`;
  const { format: _, piece, report, house: __, keys: ___, signature: ____, ...rest } = kept;
  const listed = { ...rest, title: piece.title, engine: report.engine, sha256 };
  const keys = { examination: [kept.examination], by: [kept.by] };
  return [
    { kind: KEPT_REPORT_CARD, id, expectedVersion: 0, next: { keys, body: listed } },
    { kind: KEPT_REPORT_BODY_CARD, id, expectedVersion: 0, next: { keys: {}, body: kept } },
  ];
}
