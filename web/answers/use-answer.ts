import { useQuery } from "@apollo/client/react";
import { useMemo } from "react";
import type { Piece } from "#server/domain/examination.ts";
import type { ClaimId, TermId } from "#server/domain/ids.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { pieceToInput } from "#web/shared/apollo/piece-to-input.ts";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import { makeStripGroups } from "#web/strips/make-strip-groups.ts";
import type { StripGroup } from "#web/strips/strip-row.ts";
import { stripsAxis } from "#web/strips/strips-axis.ts";
import type { AnswerFragment } from "./Answer.graphql.ts";
import { ExaminePieceDocument, type ExaminePieceQuery } from "./ExaminePiece.graphql.ts";
import { readWords } from "./read-words.ts";

/** What the engine answers on a piece that nobody keeps, with all that is needed to show it. */
export interface Examined {
  readonly kind: "examined";
  readonly report: Report;
  readonly words: ReportWords;
  readonly glossary: Glossary;
  readonly groups: readonly StripGroup[];
  readonly axis: YearAxis;
}

export type Answered =
  | { readonly kind: "waiting" }
  | { readonly kind: "failed"; readonly says: string }
  /** The graph lacks what the piece names: somebody's own store may. */
  | { readonly kind: "refused"; readonly says: readonly string[] }
  | Examined;

function makeGlossary({ terms, claims }: AnswerFragment): Glossary {
  const labels = new Map<TermId, string>(terms.map((term) => [term.id as TermId, term.label]));
  const byId = new Map(claims.map((claim) => [claim.id as ClaimId, claim]));
  return { labelOf: (term) => labels.get(term) ?? term, findClaim: (claim) => byId.get(claim) };
}

function readAnswer(given: ExaminePieceQuery["examine"], piece: Piece): Answered {
  if (given.__typename === "Refused")
    return { kind: "refused", says: given.problems.map(({ message }) => message) };
  const words = readWords(given.words);
  const glossary = makeGlossary(given);
  const { report } = given;
  const groups = makeStripGroups(report, words, piece.parts, glossary);
  const axis = stripsAxis(report.attribution.years, groups, piece.examined);
  return { kind: "examined", report, words, glossary, groups, axis };
}

/**
 * Examines a piece by the API without keeping it. While another piece is examined the last answer stays, so that
 * nothing moves before there is something new to show.
 */
export function useAnswer(piece: Piece, { skip = false }: { readonly skip?: boolean } = {}): Answered {
  const { data, previousData, error } = useQuery(ExaminePieceDocument, {
    variables: { piece: pieceToInput(piece) },
    skip,
  });
  const given = (data ?? previousData)?.examine;
  return useMemo(() => {
    if (error) return { kind: "failed", says: sayFailure(error).what };
    return given === undefined ? { kind: "waiting" } : readAnswer(given, piece);
  }, [given, error, piece]);
}
