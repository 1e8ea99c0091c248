import { ASSUMED } from "../../domain/assumptions.ts";
import { canonicalJson } from "../../domain/canonical-json.ts";
import { citeSource } from "../../domain/cite-source.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Piece } from "../../domain/examination.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import { isProblem } from "../../domain/problem.ts";
import { ancestors, broaderTerms } from "../../domain/region.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { WeighingJob } from "../../domain/weighing/job.ts";
import { STAGES, type Stage, type Weighing } from "../../domain/weighing/weighing.ts";
import type { WeighingWords } from "../../domain/weighing/weighing-words.ts";
import type { Results } from "../../ports/results.ts";
import type { Store } from "../../ports/store.ts";
import type { Weigher } from "../../ports/weigher.ts";
import { askFor } from "../../reasoning/ask-for.ts";
import { examine } from "../../reasoning/examine.ts";
import { claimedInWords } from "../../reasoning/explain/report-reader.ts";
import { weighingInWords } from "../../reasoning/explain/weighing/words.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { standingRevision } from "../standing-revision.ts";
import { readFeaturesOn } from "./read-features-on.ts";
import { readParts } from "./read-parts.ts";

/** What the probabilities say of one piece, and every term and claim that they name. */
export interface PieceWeighed {
  readonly weighing: Weighing;
  readonly words: WeighingWords;
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
}

/** Weighs a piece on a revision of the graph, the newest if none is named. Nothing is stored. */
export async function weighPiece(
  ports: { readonly store: Store; readonly weigher: Weigher; readonly results?: Results },
  piece: Piece,
  {
    stages = STAGES,
    revision,
    stop,
  }: {
    readonly stages?: readonly Stage[];
    readonly revision?: RevisionNumber | undefined;
    readonly stop?: AbortSignal | undefined;
  } = {},
): Promise<PieceWeighed | Refusal> {
  const at = await standingRevision(ports, revision);
  if (isProblem(at)) return { refused: [at] };
  const refusal = await refuseUnfitPiece(ports, piece, at);
  if (refusal) return refusal;
  const ask = askFor(piece, ASSUMED);
  const neighbourhood = await ports.store.neighbourhood({ ...ask, at });
  // What would tell two stories apart is looked for among what to look at.
  const asksForLooks = stages.includes("looks") || stages.includes("rivals");
  const lookFor = asksForLooks ? await lookForOn(ports.store, piece, at) : undefined;
  const { findings, attribution } = (ports.results?.report ?? examine)(piece, neighbourhood);
  const job: WeighingJob = {
    ...{ piece, neighbourhood, assumptions: ASSUMED, report: { findings }, stages },
    ...(lookFor ? { lookFor } : {}),
  };
  const weigh = () => ports.weigher.weigh(job, stop);
  const weighing = await (ports.results ? ports.results.weighing(job, weigh) : weigh());
  const { terms, claims } = lookFor?.neighbourhood ?? neighbourhood;
  const named = new Set(canonicalJson(weighing).match(/[A-Za-z0-9][A-Za-z0-9._-]*/g));
  const words = await wordsOf(
    ports.store,
    weighing,
    piece,
    claimedInWords(attribution),
    { terms, claims },
    at,
  );
  return {
    ...{ weighing, words },
    terms: terms.filter((term) => named.has(term.id)),
    claims: claims.filter((claim) => named.has(claim.id)),
  };
}

async function wordsOf(
  store: Store,
  weighing: Weighing,
  piece: Piece,
  claimed: string,
  { terms, claims }: Pick<PieceWeighed, "terms" | "claims">,
  at: RevisionNumber,
): Promise<WeighingWords> {
  const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
  const byId = new Map(claims.map((claim) => [claim.id, claim]));
  const named = (weighing.sensitivity?.dependsOn ?? []).flatMap((what) =>
    what.kind === "without-source" ? [what.source] : [],
  );
  const sources = await store.sources(named, at);
  return weighingInWords(weighing, piece, claimed, {
    labelOf: (term) => labels.get(term) ?? term,
    claimOf: (claim) => byId.get(claim),
    nameOfSource: (source) => {
      const found = sources.get(source);
      return found ? citeSource(found) : source;
    },
  });
}

/** Features among which it is chosen what to look at next. */
const MOST_FEATURES = 2_000;

/** The features looked for on the kinds of part of a piece, and what the graph knows of them. */
async function lookForOn(
  store: Store,
  piece: Piece,
  at: RevisionNumber,
): Promise<NonNullable<WeighingJob["lookFor"]>> {
  const broader = broaderTerms(await readParts(store, at));
  const kinds = new Set(piece.parts.flatMap(({ kind }) => kind ?? []));
  const lists = [...kinds].sort().map((kind) => ancestors(kind, broader));
  const { features } = await readFeaturesOn(store, lists, MOST_FEATURES, at);
  const ask = askFor(piece, ASSUMED);
  const seeds = [...new Set([...ask.seeds, ...features.map(({ id }) => id)])].sort();
  return { features, neighbourhood: await store.neighbourhood({ ...ask, seeds, at }) };
}
