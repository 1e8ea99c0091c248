import { ASSUMED } from "../../domain/assumptions.ts";
import type { Citation, Claim } from "../../domain/claim.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Store } from "../../ports/store.ts";
import { claimedYears } from "../../reasoning/check.ts";
import { tellingInWords } from "../../reasoning/explain/telling-in-words.ts";
import { knowGraph } from "../../reasoning/known-graph.ts";
import { drawUpSheet, type SheetAsk } from "../../reasoning/sheet/draw-up-sheet.ts";
import type { SheetSection } from "../../reasoning/sheet/share-out.ts";
import type { Telling } from "../../reasoning/sheet/telling.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { standingRevision } from "../standing-revision.ts";
import { inSlices } from "./in-slices.ts";
import { readForm } from "./read-form.ts";
import { turnsOfLook } from "./turns-of-look.ts";

/** A feature to look for, with what it would mean to see it, in words. */
export interface SheetEntry {
  readonly feature: TermId;
  readonly tells: Telling["tells"];
  readonly means: string;
  /** Each basis on which the claims are cited, once. */
  readonly bases: readonly Citation["basis"][];
  readonly claims: readonly ClaimId[];
}

/** A field sheet, with every term by its id. */
export interface FieldSheet {
  readonly revision: RevisionNumber;
  readonly ask: SheetAsk;
  /** Expected parts of the form, as it lists them. */
  readonly parts: readonly TermId[];
  /** More features are looked for on them, too many to weigh. */
  readonly isCut: boolean;
  readonly sections: readonly (Omit<SheetSection, "entries"> & { readonly entries: readonly SheetEntry[] })[];
}

/** Draws up the field sheet of a form on a revision, the newest if none is named. Refused: what a piece would be refused for. */
export async function drawUpFieldSheet(
  { store }: { readonly store: Store },
  ask: SheetAsk,
  revision?: RevisionNumber,
): Promise<FieldSheet | Refusal> {
  const at = await standingRevision({ store }, revision);
  if (isProblem(at)) return { refused: [at] };
  const refusal = await refuseUnfit(store, ask, at);
  if (refusal) return refusal;
  const hash = at === 0 ? "" : ((await store.revision(at))?.hash ?? "");
  return keep(`${hash} ${JSON.stringify(ask)}`, () => drawUp(store, ask, at));
}

/** A piece of this form, place and date is refused for the same reasons. */
async function refuseUnfit(
  store: Store,
  { form, region, date }: SheetAsk,
  at: RevisionNumber,
): Promise<Refusal | undefined> {
  const attribution = { form, date: date ?? ANY_DATE, ...(region === undefined ? {} : { region }) };
  const piece = {
    ...{ title: "", invented: true, examined: LATEST, attribution },
    ...{ parts: [], observations: [], together: [], separate: [] },
  };
  const refused = await refuseUnfitPiece({ store }, piece, at);
  return (
    refused &&
    refusalFrom(refused.refused.map((problem): Problem => ({ ...problem, path: problem.path.slice(1) })))
  );
}
const LATEST = 9999;
const ANY_DATE = `../${LATEST}`;

async function drawUp(store: Store, ask: SheetAsk, at: RevisionNumber): Promise<FieldSheet> {
  const turn = turnsOfLook();
  const { terms, around, isCut } = await readForm(store, ask, at, turn);
  await nextTurn();
  const graph = knowGraph(around, ASSUMED);
  const sheet = await inSlices(drawUpSheet(ask, terms, graph), turn);
  await turn();
  const labels = new Map(around.terms.map((term: Term) => [term.id, nameInSentence(term)]));
  const claims = new Map(around.claims.map((claim) => [claim.id, claim]));
  const reader = {
    labelOf: (term: TermId) => labels.get(term) ?? term,
    isPlace: (term: TermId) => graph.kindOf(term) === "region",
    claimOf: (claim: ClaimId) => claims.get(claim),
    claimed: ask.date === undefined ? undefined : claimedYears(ask.date, ASSUMED),
  };
  return {
    revision: at,
    ask,
    ...{ parts: sheet.parts, isCut },
    sections: sheet.sections.map((section) => ({
      ...section,
      entries: section.entries.map((entry) => ({
        feature: entry.feature,
        tells: entry.tells,
        means: tellingInWords(entry, reader),
        bases: basesOf(entry.claims.flatMap((claim) => claims.get(claim) ?? [])),
        claims: entry.claims,
      })),
    })),
  };
}

const BASES: readonly Citation["basis"][] = ["published", "common practice", "from memory"];

const basesOf = (claims: readonly Claim[]): readonly Citation["basis"][] =>
  BASES.filter((basis) => claims.some(({ citations }) => citations.some((cited) => cited.basis === basis)));

/** By the hash of the revision, which stands for the whole graph, and what was asked. */
const kept = new Map<`${Revision["hash"]} ${string}`, Promise<FieldSheet>>();
/** Sheets kept in memory. */
const MOST_KEPT = 24;

function keep(key: `${Revision["hash"]} ${string}`, work: () => Promise<FieldSheet>): Promise<FieldSheet> {
  const known = kept.get(key);
  if (known) return known;
  const working = work();
  kept.set(key, working);
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  // What failed is drawn up again for the next who asks.
  working.catch(() => kept.delete(key));
  return working;
}
