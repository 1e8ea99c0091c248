import { ASSUMED } from "../../domain/assumptions.ts";
import type { Citation } from "../../domain/claim.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import { isProblem, type Problem } from "../../domain/problem.ts";
import type { Revision, RevisionNumber } from "../../domain/revision.ts";
import { ASSUMED_ODDS } from "../../domain/weighing/assumed-odds.ts";
import type { PlanItem } from "../../domain/weighing/looks.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import type { Store } from "../../ports/store.ts";
import { claimedYears } from "../../reasoning/check.ts";
import { type AnswersInWords, answersInWords } from "../../reasoning/explain/plan-in-words.ts";
import { tellingInWords } from "../../reasoning/explain/telling-in-words.ts";
import { yearsInWords } from "../../reasoning/explain/years-in-words.ts";
import { knowGraph } from "../../reasoning/known-graph.ts";
import { drawUpPlan, type PlanAsk } from "../../reasoning/plan/draw-up-plan.ts";
import { type Refusal, refusalFrom } from "../refusal.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";
import { standingRevision } from "../standing-revision.ts";
import { inSlices } from "./in-slices.ts";
import { readForm } from "./read-form.ts";
import { turnsOfLook } from "./turns-of-look.ts";

/** An item with its words. */
export interface PlannedLook extends PlanItem {
  readonly bases: readonly Citation["basis"][];
  /** What it would mean to see it: years, states. */
  readonly means: string;
  readonly answers: AnswersInWords;
}

/** What to look at on a piece before it is there, with every term by its id. */
export interface InspectionPlan {
  readonly revision: RevisionNumber;
  readonly ask: PlanAsk;
  readonly parts: readonly TermId[];
  readonly items: readonly PlannedLook[];
  readonly considered: number;
  /** More features are looked for on the parts, too many to weigh. */
  readonly isCut: boolean;
}

/** Plans the look at a piece of an attribution on a revision, the newest if none is named. Refused: what a piece would be refused for. */
export async function planInspection(
  { store }: { readonly store: Store },
  ask: PlanAsk,
  revision?: RevisionNumber,
): Promise<InspectionPlan | Refusal> {
  const at = await standingRevision({ store }, revision);
  if (isProblem(at)) return { refused: [at] };
  const { form, region, date, examined } = ask;
  const refusal = await refuseUnfitPiece(
    { store },
    {
      ...{ title: "", invented: true, examined },
      attribution: { form, date, ...(region === undefined ? {} : { region }) },
      ...{ parts: [], observations: [], together: [], separate: [] },
    },
    at,
  );
  if (refusal)
    return refusalFrom(
      refusal.refused.map(
        (problem): Problem => ({
          ...problem,
          path: problem.path[0] === "attribution" ? problem.path.slice(1) : problem.path,
        }),
      ),
    ) as Refusal;
  const hash = at === 0 ? "" : ((await store.revision(at))?.hash ?? "");
  return keep(`${hash} ${JSON.stringify(ask)}`, () => plan(store, ask, at));
}

async function plan(store: Store, ask: PlanAsk, at: RevisionNumber): Promise<InspectionPlan> {
  const turn = turnsOfLook();
  const { terms, around, isCut } = await readForm(store, ask, at, turn);
  await nextTurn();
  const graph = knowGraph(around, ASSUMED);
  const { parts, items, considered } = await inSlices(drawUpPlan(ask, terms, graph, ASSUMED_ODDS), turn);
  const labels = new Map(around.terms.map((term) => [term.id, nameInSentence(term)]));
  const claims = new Map(around.claims.map((claim) => [claim.id, claim]));
  const claimed = claimedYears(ask.date, ASSUMED);
  const reader = {
    labelOf: (term: TermId) => labels.get(term) ?? term,
    claimOf: (claim: ClaimId) => claims.get(claim),
    isPlace: (term: TermId) => graph.kindOf(term) === "region",
    claimed,
  };
  const said = claimed.every(Number.isFinite) ? yearsInWords([[...claimed]]) : "the claimed years";
  return {
    ...{ revision: at, ask, parts, considered, isCut },
    items: items.map(({ item, weighed }) => {
      const cited = item.claims.flatMap((claim) => claims.get(claim)?.citations ?? []);
      return {
        ...item,
        bases: BASES.filter((basis) => cited.some((citation) => citation.basis === basis)),
        // What a sign speaks for stands in the answers.
        means: weighed === undefined || weighed.tells === "sign" ? "" : tellingInWords(weighed, reader),
        answers: answersInWords(item, said),
      };
    }),
  };
}

const BASES: readonly Citation["basis"][] = ["published", "common practice", "from memory"];

/** By the hash of the revision, which stands for the whole graph, and what was asked. */
const kept = new Map<`${Revision["hash"]} ${string}`, Promise<InspectionPlan>>();
/** Plans kept in memory. */
const MOST_KEPT = 24;

function keep(
  key: `${Revision["hash"]} ${string}`,
  work: () => Promise<InspectionPlan>,
): Promise<InspectionPlan> {
  const known = kept.get(key);
  if (known) return known;
  const working = work();
  kept.set(key, working);
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  // What failed is planned again for the next who asks.
  working.catch(() => kept.delete(key));
  return working;
}
