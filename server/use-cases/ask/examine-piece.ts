import { ASSUMED } from "../../domain/assumptions.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Piece } from "../../domain/examination.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Report } from "../../domain/report.ts";
import type { ReportWords } from "../../domain/report-words.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Results } from "../../ports/results.ts";
import type { Store } from "../../ports/store.ts";
import { askFor } from "../../reasoning/ask-for.ts";
import { examine } from "../../reasoning/examine.ts";
import { reportInWords } from "../../reasoning/explain/words.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { standingRevision } from "../standing-revision.ts";

/** The answer for one piece: the report, the same in words, and every term and claim that the report names. */
export interface Examined {
  readonly report: Report;
  readonly words: ReportWords;
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
}

/** Examines a piece on a revision of the graph, the newest if none is named. Nothing is stored. */
export async function examinePiece(
  ports: { readonly store: Store; readonly results?: Results },
  piece: Piece,
  revision?: RevisionNumber,
): Promise<Examined | Refusal> {
  const at = await standingRevision(ports, revision);
  if (isProblem(at)) return { refused: [at] };
  const refusal = await refuseUnfitPiece(ports, piece, at);
  if (refusal) return refusal;
  return examinedOn(piece, await ports.store.neighbourhood({ ...askFor(piece, ASSUMED), at }), ports.results);
}

/** The answer for a piece that fits a neighbourhood. */
export function examinedOn(piece: Piece, neighbourhood: Neighbourhood, results?: Results): Examined {
  const report = (results?.report ?? examine)(piece, neighbourhood);
  return { report, words: wordsOf(report, piece, neighbourhood), ...namedIn(report, neighbourhood) };
}

function wordsOf(report: Report, piece: Piece, { terms, claims }: Neighbourhood): ReportWords {
  const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  return reportInWords(report, piece, {
    labelOf: (term) => labels.get(term) ?? term,
    claimOf: (claim) => byId.get(claim),
  });
}

/** Terms and claims whose ids stand in the report, also inside an assumption such as `earliestAnywhere(tool.plane)`. */
function namedIn(report: Report, { terms, claims }: Neighbourhood) {
  const named = new Set<string>();
  collectTexts(report, named);
  for (const text of [...named])
    if (text.includes("(")) for (const id of text.match(/[A-Za-z0-9][A-Za-z0-9._-]*/g) ?? []) named.add(id);
  return {
    terms: terms.filter((term) => named.has(term.id)),
    claims: claims.filter((claim) => named.has(claim.id)),
  };
}

/** Every text that stands somewhere in a value. */
function collectTexts(value: unknown, into: Set<string>): void {
  if (typeof value === "string") into.add(value);
  else if (Array.isArray(value)) for (const each of value) collectTexts(each, into);
  else if (typeof value === "object" && value !== null)
    for (const key in value) collectTexts((value as Record<string, unknown>)[key], into);
}
