import {
  type Claim,
  type Dated,
  EVENT_RELATIONS,
  type Hardness,
  type Indicates,
  PERIOD_RELATIONS,
  STRENGTHS,
  type Strength,
  type TypicalOf,
} from "../../domain/claim.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { Support } from "../../domain/report.ts";
import { applies } from "../../domain/scope.ts";
import { ALL_YEARS, isAllYears, type Span, type Years, yearsToJson } from "../../domain/years.ts";
import { supportOf } from "../atoms.ts";
import type { Check } from "../check.ts";
import type { Allowed } from "../claim-years.ts";
import { setsOverPlaces, verdictOn } from "../find.ts";
import type { Steps } from "../in-one-go.ts";
import type { KnownGraph } from "../known-graph.ts";
import { findSupportIn, proofsOverPlaces } from "../support.ts";
import type { Sets } from "../view.ts";
import { evenness, yearsInQuestion, yearsTaken } from "./evenness.ts";
import type { Telling } from "./telling.ts";

/** What is known of the piece that the sheet is for, beside its form. */
export interface SheetQuestion {
  readonly graph: KnownGraph;
  /** The claimed years; undefined where no date is claimed. */
  readonly claimed: Span | undefined;
  /** Where it is claimed to be from; undefined: anywhere. */
  readonly region: Check["feature"] | undefined;
}

/** What of a telling follows from the graph; the rest is of the feature's own. */
export type Weighed = Omit<Telling, "part" | "feature" | "position" | "sight" | "kinds">;

const DATED: readonly string[] = [...EVENT_RELATIONS, ...PERIOD_RELATIONS];
/** Claims of one place that are told where no place is claimed. */
const MOST_TOLD = 2;

const ALL: Allowed = { outer: ALL_YEARS, inner: ALL_YEARS };
const UNBOUNDED: Sets = { possible: ALL, usual: ALL };

/** What it would tell to see the feature of a check on its part (F2). Undefined if it would tell nothing. A step is a place, or a proof. */
export function* weighFeature(check: Check, question: SheetQuestion): Steps<Weighed | undefined> {
  const { graph, claimed } = question;
  // What one place leaves open is open: the other places need not be looked at.
  let isOpen = false;
  for (const view of check.views) {
    isOpen = isAllYears(view.sets(check.feature).usual.outer);
    if (isOpen) break;
    yield;
  }
  const sets = isOpen ? UNBOUNDED : setsOverPlaces(check);
  const [possible, usual] = [sets.possible.outer, sets.usual.outer];
  const asked = yearsInQuestion(claimed);
  const all = asked[1] - asked[0] + 1;
  const isBound = yearsTaken(possible, asked) < all;
  const isHabit = yearsTaken(usual, asked) < all;
  const supports: Record<Hardness, Support> = { physical: supportOf([]), practice: supportOf([]) };
  if (isBound || isHabit) {
    const proofs = yield* proofsOverPlaces(check);
    if (isBound)
      supports.physical = supportOf(yield* findSupportIn(proofs, check, "physical", { give: possible }));
    if (isHabit)
      supports.practice = supportOf(yield* findSupportIn(proofs, check, "practice", { give: usual }));
  }
  const { physical: bound, practice: habit } = supports;
  const signs = signsOf(check, graph);
  const told = isBound || isHabit || signs.length > 0 ? [] : claimsTold(check, question);
  const company = typicalHere(check, question);
  const typical = company.map(({ id }) => id);
  const dated = [...bound.claims, ...habit.claims, ...signs.map(({ id }) => id)];
  const claims = [...new Set([...dated, ...told.map(({ id }) => id), ...typical])];
  if (claims.length === 0) return undefined;
  const isRecord = dated.length === 0 && told.every(({ relation }) => relation === "attested");
  const rank = isRecord ? (typical.length > 0 ? "typical" : "record") : "habit";
  const tells = isBound ? "bound" : signs.length > 0 ? "sign" : rank;
  return {
    tells,
    possible: yearsToJson(isBound ? possible : ALL_YEARS),
    usual: yearsToJson(isHabit ? usual : ALL_YEARS),
    isAssumed: bound.assumptions.length > 0,
    claims,
    strength: weakest(tells === "typical" ? typical : claims.filter((id) => !typical.includes(id)), graph),
    isOfPlace: company.some(({ object }) => object === question.region),
    isOfForm: claims.some((claim) => formOf(graph.claimOf(claim)) !== undefined),
    isOfChange: signs.some(({ states }) => states.some((state) => state !== "original")),
    isAgainstDate: claimed !== undefined && verdictOn(sets, claimed).label === "contradictory",
    evenness: evennessOf(isBound ? possible : usual, told, question, asked),
  };
}

function evennessOf(years: Years, told: readonly Dated[], { graph }: SheetQuestion, asked: Span): number {
  if (!isAllYears(years)) return evenness(years, asked);
  return Math.max(0, ...told.map((claim) => evenness(graph.yearsOf(claim).outer, asked)));
}

/** The `indicates` claims that apply wherever the piece can be from, the strongest first. */
function signsOf({ feature, views }: Check, graph: KnownGraph): readonly Indicates[] {
  return graph
    .claimsOf(feature)
    .filter((claim): claim is Indicates => claim.relation === "indicates")
    .filter((claim) => views.every(({ context }) => applies(claim.scope, context.where, graph.broader)))
    .sort(compareStrength);
}

/**
 * Dated claims of the feature itself that bound nothing here: records of the place or of one within it, and, where no place
 * is claimed, what holds of single places. The first by year.
 */
function claimsTold({ feature, views }: Check, { graph, region }: SheetQuestion): readonly Dated[] {
  const where = views[0]?.context.where;
  const isOfPlace = (claim: Dated): boolean => {
    const place = claim.scope.region;
    if (place === undefined || region === undefined) return true;
    return (
      claim.relation === "attested" &&
      (isWithin(place, region, graph.broader) || isWithin(region, place, graph.broader))
    );
  };
  return graph
    .claimsOf(feature)
    .filter((claim): claim is Dated => DATED.includes(claim.relation))
    .filter((claim) => {
      const { region: _, ...scope } = claim.scope;
      return where !== undefined && isOfPlace(claim) && applies(scope, where, graph.broader);
    })
    .sort((a, b) =>
      firstDifference(
        Number(a.relation === "attested") - Number(b.relation === "attested"),
        firstYear(a, graph) - firstYear(b, graph),
        compareText(a.id, b.id),
      ),
    )
    .slice(0, MOST_TOLD);
}

/** The year at which a claim begins, or ends if it states no begin. */
const firstYear = (claim: Dated, graph: KnownGraph): number =>
  graph.yearsOf(claim).outer[0]?.find(Number.isFinite) ?? 0;

/**
 * What the feature is said to be typical of that the piece can be: its form, and the claimed place, one within it or one
 * around it; any place where none is claimed. No style: a sheet is for none. The strongest first.
 */
function typicalHere({ feature, views }: Check, { graph, region }: SheetQuestion): readonly TypicalOf[] {
  const context = views[0]?.context.where;
  const isNear = (one: TermId, other: TermId): boolean =>
    isWithin(one, other, graph.broader) || isWithin(other, one, graph.broader);
  const isOfPlace = (place: TermId | undefined): boolean =>
    place === undefined || region === undefined || isNear(place, region);
  const canBe = (object: TermId): boolean => {
    const kind = graph.kindOf(object);
    if (kind === "region") return isOfPlace(object);
    return kind === "form" && context?.form !== undefined && isNear(object, context.form);
  };
  return graph
    .claimsOf(feature)
    .filter((claim): claim is TypicalOf => claim.relation === "typical of")
    .filter(({ object, scope: { region: place, ...scope } }) => {
      const isHere = context !== undefined && applies(scope, context, graph.broader);
      return isHere && isOfPlace(place) && canBe(object);
    })
    .sort(compareStrength);
}

const compareStrength = (a: Claim, b: Claim): number =>
  firstDifference(STRENGTHS.indexOf(a.strength) - STRENGTHS.indexOf(b.strength), compareText(a.id, b.id));

const formOf = (claim: Claim): string | undefined => ("scope" in claim ? claim.scope.form : undefined);

const weakest = (claims: readonly ClaimId[], graph: KnownGraph): Strength =>
  STRENGTHS[Math.max(...claims.map((claim) => STRENGTHS.indexOf(graph.claimOf(claim).strength)))] as Strength;
