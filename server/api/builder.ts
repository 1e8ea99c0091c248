import SchemaBuilder from "@pothos/core";
import type { Change } from "../domain/change.ts";
import type { Citation, Claim } from "../domain/claim.ts";
import type { DifferenceInWords, EditInWords } from "../domain/edit-words.ts";
import type { Attribution, Examination, Observation, Part, Piece } from "../domain/examination.ts";
import type { Problem } from "../domain/problem.ts";
import type { KeptComment } from "../domain/proposals/comment.ts";
import type { KeptDispute } from "../domain/proposals/dispute.ts";
import type { FormFields } from "../domain/proposals/form/form-fields.ts";
import type { KeptProposal } from "../domain/proposals/kept-proposal.ts";
import type { ReferenceRow } from "../domain/reference-row.ts";
import type { Report } from "../domain/report.ts";
import type { ReportWords, StepInWords } from "../domain/report-words.ts";
import type { Revision } from "../domain/revision.ts";
import type { ShiftLine } from "../domain/shift-words.ts";
import type { Source } from "../domain/source.ts";
import type { AatMatch, Term } from "../domain/term.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";
import type { WeighingWords } from "../domain/weighing/weighing-words.ts";
import { LARGEST_PAGE, type PastEdit, type SearchHit } from "../ports/store.ts";
import type { Examined } from "../use-cases/ask/examine-piece.ts";
import type { FoundDisagreement, RuleFound } from "../use-cases/ask/find-disagreements.ts";
import type { PieceWeighed } from "../use-cases/ask/weigh-piece.ts";
import type { ExaminationChanged } from "../use-cases/examination-changed.ts";
import type { Refusal } from "../use-cases/refusal.ts";
import type { AsOf } from "./as-of.ts";
import { addConnection, addPageInfo, type PageInfo } from "./connection.ts";
import type { Context } from "./context.ts";
import type { DatedYears } from "./dated-years.ts";
import { addEnums } from "./types/enums.ts";

/** What stands behind each type of the schema; types that only make up a page are in connection.ts. */
interface Objects {
  PageInfo: PageInfo;
  Term: AsOf<Term>;
  AatMatch: AatMatch;
  ReferenceRow: AsOf<ReferenceRow>;
  Claim: AsOf<Claim>;
  Way: { readonly terms: readonly AsOf<Term>[] };
  DatedYears: DatedYears;
  Citation: AsOf<Citation>;
  Source: AsOf<Source>;
  Revision: Revision;
  HistoryEntry: PastEdit;
  Edit: EditInWords;
  Difference: DifferenceInWords;
  SearchHit: SearchHit;
  DisagreementRule: RuleFound;
  Disagreement: AsOf<FoundDisagreement>;
  Attribution: Attribution;
  Part: Part;
  Observation: Observation;
  Piece: Piece;
  Examination: Examination;
  Examined: Examined;
  Weighed: PieceWeighed;
  ReportWords: ReportWords;
  StepInWords: StepInWords;
  FindingInWords: ReportWords["findings"][number];
  RuleOutInWords: ReportWords["ruleOuts"][number];
  SignInWords: ReportWords["signs"][number];
  PartInWords: ReportWords["parts"][number];
  Problem: Problem;
  Refused: Refusal;
  ExaminationChanged: ExaminationChanged;
  Proposal: KeptProposal;
  ShiftLine: ShiftLine;
  Comment: KeptComment;
  Dispute: KeptDispute;
  ProposalChanged: ProposalChanged;
}

/** What became of a proposal. */
interface ProposalChanged {
  readonly proposal: KeptProposal;
  readonly stillNeeded?: number;
}

interface Types {
  Context: Context;
  Objects: Objects;
  Interfaces: { Node: { readonly id: string } };
  Scalars: {
    Report: { Input: never; Output: Report };
    Weighing: { Input: never; Output: Weighing };
    Change: { Input: unknown; Output: Change };
    FormFields: { Input: unknown; Output: FormFields };
    WeighingWords: { Input: never; Output: WeighingWords };
  };
  DefaultFieldNullability: false;
}

const startBuilder = () => new SchemaBuilder<Types>({ defaultFieldNullability: false });
export type PlainBuilder = ReturnType<typeof startBuilder>;

/** A fresh schema builder that knows what stands behind the types, with the enums, connections and unions by name. */
export function createBuilder() {
  const b = startBuilder();
  addPageInfo(b);
  const connections = {
    terms: addConnection<AsOf<Term>>(b, "Term"),
    claims: addConnection<AsOf<Claim>>(b, "Claim"),
    sources: addConnection<AsOf<Source>>(b, "Source"),
    revisions: addConnection<Revision>(b, "Revision"),
    history: addConnection<PastEdit>(b, "HistoryEntry"),
    examinations: addConnection<Examination>(b, "Examination"),
    proposals: addConnection<KeptProposal>(b, "Proposal"),
    comments: addConnection<KeptComment>(b, "Comment"),
    disputes: addConnection<KeptDispute>(b, "Dispute"),
    disagreements: addConnection<AsOf<FoundDisagreement>>(b, "Disagreement"),
  };
  const results = {
    examine: b.unionType("ExamineResult", {
      types: ["Examined", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "Examined"),
    }),
    weigh: b.unionType("WeighResult", {
      types: ["Weighed", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "Weighed"),
    }),
    proposal: b.unionType("ProposalResult", {
      types: ["ProposalChanged", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "ProposalChanged"),
    }),
    comment: b.unionType("CommentResult", {
      types: ["Comment", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "Comment"),
    }),
    dispute: b.unionType("DisputeResult", {
      types: ["Dispute", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "Dispute"),
    }),
    change: b.unionType("ChangeExaminationResult", {
      types: ["ExaminationChanged", "Refused"],
      resolveType: (result) => ("refused" in result ? "Refused" : "ExaminationChanged"),
    }),
  };
  const pageOf = (rows: number) =>
    b.args((t) => ({
      first: t.int({ required: true, defaultValue: rows, description: `1 to ${LARGEST_PAGE}.` }),
      after: t.string({ description: "The cursor of the last row of the page before." }),
    }));
  return Object.assign(b, { enums: addEnums(b), connections, results, pageOf });
}
export type Builder = ReturnType<typeof createBuilder>;
