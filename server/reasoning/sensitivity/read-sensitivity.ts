import type { ClaimId, PartId, SourceId } from "../../domain/ids.ts";
import type { AssumedOdds, StateOdds } from "../../domain/weighing/odds.ts";
import { finiteWeight, significant } from "../../domain/weighing/significant.ts";
import type { Sensitivity, Varied } from "../../domain/weighing/weights.ts";
import type { Subject } from "../check.ts";
import { datePrior } from "../dates/date-prior.ts";
import { logOdds } from "../dates/log-odds.ts";
import type { Group, Model } from "../dates/model.ts";
import { placingOf } from "../dates/placing.ts";
import { type Posterior, statesOf, weighModel } from "../dates/posterior.ts";
import { type ModelReader, modelReader } from "../dates/read-model.ts";
import { shareWithin } from "../dates/share-within.ts";
import { withPriors } from "../dates/with-priors.ts";
import type { Workings } from "../dates/workings.ts";
import { contaminated } from "./contaminated.ts";
import { moreLater } from "./more-later.ts";

const EPSILON = 0.1;
const FACTORS = [0.5, 2] as const;

/** One answer of the weighing, short. */
interface Outcome {
  readonly claimed: number;
  readonly log10: number;
  readonly states: readonly { readonly part: PartId; readonly odds: StateOdds }[];
}

/** The piece as it was weighed, with what that left behind. */
interface Weighed {
  readonly read: ModelReader;
  readonly posterior: Posterior;
  readonly workings: Workings;
}

/**
 * How far the answer hangs on what was assumed: each prior on the date, half and twice the odds of later parts, of what lies outside
 * all known years and of wrong claims, and each source left out. One thing at a time. O(sources x (parts they touch) x years).
 */
export function readSensitivity(
  subject: Subject,
  odds: AssumedOdds,
  { read, posterior, workings }: Weighed,
): Sensitivity {
  const { claimed } = subject;
  const { model } = posterior;
  const base = outcomeOf(posterior, subject);
  const told = partsTold(model);
  const varied: Varied[] = [];
  const vary = (what: Varied["what"], changed: Model): void => {
    const { log10, states, ...rest } = outcomeOf(weighModel(changed, workings.mixer), subject);
    varied.push({
      ...{ what, claimed: significant(rest.claimed), log10: finiteWeight(log10) },
      parts: states.map(({ part, odds: of }) => ({ part, odds: rounded(of) })),
    });
  };
  for (const prior of ["uniform", "as claimed"] as const)
    if (prior !== odds.datePrior)
      vary({ kind: "date-prior", prior }, { ...model, prior: datePrior(prior, model, claimed) });
  for (const factor of FACTORS) {
    const again = (kind: "leak" | "wrong-claims", changed: AssumedOdds): void =>
      vary({ kind, factor }, modelReader(subject, changed, placingOf(subject, changed, workings))());
    vary({ kind: "later-parts", factor }, withPriors(model, subject, moreLater(odds, factor)));
    again("leak", { ...odds, leak: odds.leak * factor });
    again("wrong-claims", moreWrong(odds, factor));
  }
  for (const [source, claims] of claimsBySource(model.used, subject))
    vary({ kind: "without-source", source }, read(new Map(claims.map((id) => [id, 0] as const))));
  const outcomes = varied.map(({ claimed: share, parts }) => ({ share, parts }));
  const shares = [base.claimed, ...outcomes.map(({ share }) => share)];
  return {
    varied,
    bounds: { epsilon: EPSILON, claimed: bounded(contaminated(posterior, claimed, EPSILON)) },
    claimed: bounded([Math.min(...shares), Math.max(...shares)]),
    original: base.states.map(({ part, odds: of }, i) => {
      const all = [of.original, ...outcomes.map(({ parts }) => parts[i]?.odds.original ?? of.original)];
      return { part, range: bounded([Math.min(...all), Math.max(...all)]) };
    }),
    dependsOn: varied.filter((one) => changesTheWord(one, base, told)).map(({ what }) => what),
  };
}

function outcomeOf(posterior: Posterior, { claimed }: Subject): Outcome {
  const { model, years } = posterior;
  const groups = model.cases[0]?.groups ?? [];
  return {
    claimed: shareWithin(years, model.from, claimed),
    log10: logOdds(years, model.from, claimed) - logOdds(model.prior, model.from, claimed),
    states: groups.flatMap(({ parts }, i) => {
      const odds = statesOf(posterior, i);
      return parts.map((part) => ({ part, odds }));
    }),
  };
}

/** Parts of which something seen tells a state from another; the odds of the others are their prior, and no answer. */
function partsTold({ cases }: Model): ReadonlySet<PartId> {
  const isTold = ({ factors, signs }: Group): boolean =>
    factors.some(({ byYear }) => byYear.some((value) => value !== byYear[0])) ||
    signs.some(({ byState }) => new Set(Object.values(byState)).size > 1);
  return new Set(cases.flatMap(({ groups }) => groups.filter(isTold).flatMap(({ parts }) => parts)));
}

/** For, against, or neither: within half a decade of odds the evidence does not discriminate. */
const side = (log10: number | null): -1 | 0 | 1 =>
  log10 === null || Math.abs(log10) < 0.5 ? 0 : log10 > 0 ? 1 : -1;

const changesTheWord = ({ log10, parts }: Varied, base: Outcome, told: ReadonlySet<PartId>): boolean =>
  side(log10) !== side(finiteWeight(base.log10)) ||
  parts.some(
    ({ part, odds }, i) => told.has(part) && likeliest(odds) !== likeliest(base.states[i]?.odds ?? odds),
  );

const likeliest = ({ original, later, reused, reworked }: StateOdds): number => {
  const all = [original, later, reused, reworked];
  return all.indexOf(Math.max(...all));
};

function moreWrong(odds: AssumedOdds, factor: number): AssumedOdds {
  const { certain, firm, usual, tentative } = odds.wrongClaim;
  const wrongClaim = {
    certain: certain * factor,
    firm: firm * factor,
    usual: usual * factor,
    tentative: Math.min(0.99, tentative * factor),
  };
  return { ...odds, wrongClaim, wrongFallback: Math.min(0.99, odds.wrongFallback * factor) };
}

/** Sources that alone stand behind claims the weighing uses, with those claims. */
function claimsBySource(
  used: readonly ClaimId[],
  { graph }: Subject,
): readonly (readonly [SourceId, readonly ClaimId[]])[] {
  const bySource = new Map<SourceId, ClaimId[]>();
  for (const id of used) {
    const { citations } = graph.claimOf(id);
    const [first] = citations;
    if (first?.basis !== "published" || citations.length > 1) continue;
    bySource.set(first.source, [...(bySource.get(first.source) ?? []), id]);
  }
  return [...bySource].sort(([a], [b]) => (a < b ? -1 : 1));
}

const bounded = ([a, b]: readonly [number, number]): readonly [number, number] => [
  significant(a),
  significant(b),
];
const rounded = ({ original, later, reused, reworked }: StateOdds): StateOdds => ({
  original: significant(original),
  later: significant(later),
  reused: significant(reused),
  reworked: significant(reworked),
});
