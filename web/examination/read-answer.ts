import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { AnswerFragment } from "#web/answers/Answer.graphql.ts";
import { readWords } from "#web/answers/read-words.ts";
import type { CitedClaimFragment } from "#web/strips/CitedClaim.graphql.ts";
import type {
  ExaminationFieldsFragment,
  ProblemFieldsFragment,
  RecordedFragment,
} from "./Examination.graphql.ts";
import { readOdds } from "./read-odds.ts";

/** The answer of the engine on a stored piece, or why there is none. */
export type Answer =
  | {
      readonly kind: "examined";
      readonly revision: number;
      readonly report: Report;
      readonly words: ReportWords;
    }
  | { readonly kind: "refused"; readonly problems: readonly ProblemFieldsFragment[] };

/** An examination as this page keeps it. */
export interface StoredExamination {
  readonly id: string;
  readonly version: number;
  readonly canUndo: boolean;
  readonly changedAt: string;
  readonly piece: Piece;
  /** The form with what the drawing and the list of usual parts need. */
  readonly form: RecordedFragment["attribution"]["form"];
  readonly answer: Answer;
  /** Labels of every term named in it. */
  readonly labels: ReadonlyMap<string, string>;
  readonly claims: readonly CitedClaimFragment[];
}

const stated = <Key extends string, Value>(key: Key, value: Value | null | undefined) =>
  (value === null || value === undefined ? {} : { [key]: value }) as { [K in Key]?: Value };

const idOf = (term: { readonly id: string } | null) => (term === null ? null : id<"term">(term.id));

/** The piece as a value of the domain, from how the server gives it. */
export function pieceFromRecord(record: RecordedFragment): Piece {
  const { attribution } = record;
  return {
    title: record.title,
    invented: record.invented,
    ...stated("note", record.note),
    examined: record.examined,
    attribution: {
      date: attribution.date,
      ...stated("region", idOf(attribution.region)),
      ...stated("form", idOf(attribution.form)),
      ...stated("style", idOf(attribution.style)),
      ...stated("maker", idOf(attribution.maker)),
    },
    parts: record.parts.map((part) => ({
      id: id<"part">(part.id),
      label: part.label,
      ...stated("kind", idOf(part.kind)),
      ...stated("within", part.within === null ? null : id<"part">(part.within)),
      ...stated("region", idOf(part.region)),
    })),
    observations: record.observations.map((seen) => ({
      id: id<"observation">(seen.id),
      part: id<"part">(seen.part),
      feature: id<"term">(seen.feature.id),
      seen: seen.seen.toLowerCase() as Lowercase<typeof seen.seen>,
      sureness: seen.sureness.toLowerCase() as Lowercase<typeof seen.sureness>,
      ...stated("note", seen.note),
    })),
    together: record.together.map((group) => group.map((part) => id<"part">(part))),
    separate: record.separate.flatMap(([a, b]) =>
      a === undefined || b === undefined ? [] : [[id<"part">(a), id<"part">(b)] as const],
    ),
    ...(record.odds ? { odds: readOdds(record.odds) } : {}),
  };
}

function labelsIn(record: RecordedFragment, answer: AnswerFragment | undefined): Map<string, string> {
  const { region, form, style, maker } = record.attribution;
  const terms = [
    ...[region, form, style, maker],
    ...(form?.parts ?? []),
    ...record.parts.flatMap((part) => [part.kind, part.region]),
    ...record.observations.map((seen) => seen.feature),
    ...(answer?.terms ?? []),
  ];
  return new Map(terms.flatMap((term) => (term ? [[term.id, term.label] as const] : [])));
}

/** An examination from how the server gives it. */
export function readExamination(given: ExaminationFieldsFragment): StoredExamination {
  const { examined } = given;
  const isExamined = examined.__typename === "Examined";
  return {
    id: given.id,
    version: given.version,
    canUndo: given.canUndo,
    changedAt: given.changedAt,
    piece: pieceFromRecord(given.piece),
    form: given.piece.attribution.form,
    answer: isExamined
      ? {
          kind: "examined",
          revision: examined.revision,
          report: examined.report,
          words: readWords(examined.words),
        }
      : { kind: "refused", problems: examined.problems },
    labels: labelsIn(given.piece, isExamined ? examined : undefined),
    claims: isExamined ? examined.claims : [],
  };
}
