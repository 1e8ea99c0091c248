import { ASSUMED } from "../../domain/assumptions.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Examination, Piece } from "../../domain/examination.ts";
import type { LeaningInWords } from "../../domain/leaning-words.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import type { Report } from "../../domain/report.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { withoutClaim } from "../../domain/without-claim.ts";
import type { Store } from "../../ports/store.ts";
import { askFor } from "../../reasoning/ask-for.ts";
import { examine } from "../../reasoning/examine.ts";
import { leaningInWords } from "../../reasoning/explain/leaning-in-words.ts";
import { readReport } from "../../reasoning/explain/report-reader.ts";
import { leanOn } from "../../reasoning/lean.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";

interface Ports {
  readonly store: Store;
}

/** An examination of which something leans on a claim. */
export interface FoundLeaning {
  readonly examination: Examination;
  readonly words: LeaningInWords;
}

/**
 * Which of these examinations lean on a claim as it stands on a revision, and what would be otherwise without it: the
 * piece is examined once more on its neighbourhood without the claim. A piece that cannot be examined leans on nothing.
 */
export async function findLeaning(
  ports: Ports,
  claim: Claim,
  examinations: readonly Examination[],
  at?: RevisionNumber,
): Promise<readonly FoundLeaning[]> {
  const newest = await ports.store.newestRevision();
  const on = at ?? newest?.number ?? 0;
  const found: FoundLeaning[] = [];
  for (const examination of examinations) {
    const { piece } = examination;
    const answer = await answerFor(ports, piece, on, newest?.hash ?? "");
    if (!answer?.neighbourhood.claims.some(({ id }) => id === claim.id)) continue;
    const { neighbourhood, report } = answer;
    const rest = withoutClaim(neighbourhood, claim, askFor(piece, ASSUMED));
    const without = examine(piece, rest);
    const leaning = leanOn(claim.id, report, without);
    if (leaning.findings.length + leaning.ruleOuts.length + leaning.signs.length === 0) continue;
    const words = leaningInWords(
      leaning,
      readerOf(report, piece, neighbourhood),
      readerOf(without, piece, neighbourhood),
    );
    found.push({ examination, words });
  }
  return found;
}

function readerOf(report: Report, piece: Piece, { terms, claims }: Neighbourhood) {
  const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  return readReport(report, piece, {
    labelOf: (term) => labels.get(term) ?? term,
    claimOf: (claim) => byId.get(claim),
  });
}

interface Kept {
  readonly report: Report;
  readonly neighbourhood: Neighbourhood;
}

/** Answers are kept by the hash of the newest revision, the revision asked for and the whole piece: the same in any store. */
const kept = new Map<string, Promise<Kept | undefined>>();
const MOST_KEPT = 60;

async function answerFor(
  ports: Ports,
  piece: Piece,
  at: RevisionNumber,
  hash: string,
): Promise<Kept | undefined> {
  const key = `${hash} ${at} ${canonicalJson(piece)}`;
  const known = kept.get(key);
  const answer = known ?? answerNow(ports, piece, at);
  // What was used last is forgotten last; what failed is asked again by the next.
  kept.delete(key);
  kept.set(key, answer);
  answer.catch(() => kept.delete(key));
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  return answer;
}

async function answerNow(ports: Ports, piece: Piece, at: RevisionNumber): Promise<Kept | undefined> {
  if (await refuseUnfitPiece(ports, piece, at)) return undefined;
  const neighbourhood = await ports.store.neighbourhood({ ...askFor(piece, ASSUMED), at });
  return { neighbourhood, report: examine(piece, neighbourhood) };
}
