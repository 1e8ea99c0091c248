import { ASSUMED } from "../../domain/assumptions.ts";
import type { Piece } from "../../domain/examination.ts";
import { id, type PartId, type TermId } from "../../domain/ids.ts";
import { MOVES, type Move } from "../../domain/looking.ts";
import { expectedParts, partsToLookAt } from "../../domain/parts-of-form.ts";
import { POSITIONS } from "../../domain/position.ts";
import { hasOpening, positionOf } from "../../domain/position-of.ts";
import { broaderTerms } from "../../domain/region.ts";
import type { Term } from "../../domain/term.ts";
import type { PlanItem } from "../../domain/weighing/looks.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Year } from "../../domain/years.ts";
import { readSubject } from "../check.ts";
import type { Steps } from "../in-one-go.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Candidate } from "../looks/candidates.ts";
import { chooseLooks } from "../looks/choose-looks.ts";
import type { Looked } from "../looks/foreseer.ts";
import { kinIn } from "../looks/kin-in.ts";
import { lookFrom } from "../looks/read-looks.ts";
import { weighLooks } from "../looks/weigh-looks.ts";
import { featuresByPart } from "../sheet/draw-up-sheet.ts";
import { isOfOtherForm } from "../sheet/is-of-other-form.ts";
import { readChecks } from "../sheet/read-checks.ts";
import { type Weighed, weighFeature } from "../sheet/weigh-feature.ts";
import { answersOf } from "./answers-of.ts";

/** For what a plan is drawn up: an attribution alone. */
export interface PlanAsk {
  readonly form: TermId;
  readonly region?: TermId;
  /** EDTF that can be read as an event. */
  readonly date: string;
  /** The year in which the piece will be looked at. */
  readonly examined: Year;
}

/** An item with what the graph says of its feature there; undefined where it dates nothing and is no sign. */
export interface Planned {
  readonly item: PlanItem;
  readonly weighed: Weighed | undefined;
}

/** What to look at on a piece of a form, in order, before it is there. */
export interface Plan {
  /** Expected parts of the form, as it lists them. */
  readonly parts: readonly TermId[];
  /** By position; in each the most telling first. */
  readonly items: readonly Planned[];
  /** Looks that were weighed. */
  readonly considered: number;
}

/** Items of a plan. */
const MOST = 24;
/** Looks weighed; of more, those that take least trouble. */
const MOST_WEIGHED = 2400;
const WHOLE = id<"term">("part.whole");

/**
 * Plans a look (N11 to N14): the looks that would tell most of an attribution on a piece that has the parts expected of its form and
 * of which nothing was seen yet, grouped by where one stands. `terms` holds all forms, kinds of part and features; `graph` what is
 * known of the features. A step is a look weighed.
 */
export function* drawUpPlan(
  ask: PlanAsk,
  terms: readonly Term[],
  graph: KnownGraph,
  odds: AssumedOdds,
): Steps<Plan> {
  const forms = new Map(terms.filter(({ kind }) => kind === "form").map((term) => [term.id, term]));
  const kinds = new Set(terms.filter(({ kind }) => kind === "part").map((term) => term.id));
  const broader = broaderTerms(terms);
  const expected = expectedParts(ask.form, forms);
  const parts = partsToLookAt(expected, (part) => kinds.has(part));
  const moves = new Map(terms.map((term) => [term.id, term.looking?.move ?? "nothing"]));
  const moveOf = (feature: TermId): Move => moves.get(feature) ?? "nothing";
  const wanted = [...featuresByPart(parts, terms, broader)]
    .flatMap(([part, features]) =>
      features
        .filter((feature) => !(part === WHOLE && isOfOtherForm(feature.id, ask.form, forms, graph)))
        .map((feature): Candidate => ({ part: asPart(part), feature: feature.id })),
    )
    .filter(({ feature }) => moveOf(feature) !== "sample taken")
    .sort((a, b) => MOVES.indexOf(moveOf(a.feature)) - MOVES.indexOf(moveOf(b.feature)))
    .slice(0, MOST_WEIGHED);
  const subject = readSubject(unseenPiece(ask, parts), graph, ASSUMED);
  const weighed = (yield* weighLooks(subject, wanted, odds)).filter(({ looked }) => looked.tells);
  const lookedAt = new Map<string, Looked>();
  const looks = weighed.map(({ candidate, looked }) => {
    lookedAt.set(`${candidate.part} ${candidate.feature}`, looked);
    return lookFrom(candidate, looked, { move: moveOf(candidate.feature), wouldVoid: [] }, odds);
  });
  const checksOn = yield* readChecks(ask, parts, graph);
  const around = { broader, isOpening: hasOpening(expected, broader) };
  const items: Planned[] = [];
  for (const [i, look] of chooseLooks(looks, kinIn(graph), odds.effort, MOST).next.entries()) {
    const { feature, move, bits, bitsOfState } = look;
    const kindOfPart = asKind(look.part);
    const looked = lookedAt.get(`${look.part} ${feature}`);
    if (looked === undefined) throw new Error(`${feature} was not weighed on ${look.part}`);
    const said = yield* weighFeature(checksOn(kindOfPart, feature), {
      ...{ graph, claimed: subject.claimed, region: ask.region },
    });
    const item: PlanItem = {
      ...{ rank: i + 1, position: positionOf(kindOfPart, move, around) },
      ...{ kindOfPart, feature, move, bits, bitsOfState },
      alsoOn: look.alsoOn.map(asKind),
      ...answersOf(looked, said, subject.claimed),
      claims: said?.claims ?? [],
    };
    items.push({ item, weighed: said });
  }
  items.sort((a, b) => POSITIONS.indexOf(a.item.position) - POSITIONS.indexOf(b.item.position));
  return { parts: expected, items, considered: wanted.length };
}

/** A part of an invented piece is named after its kind. */
const asPart = (kind: TermId): PartId => id<"part">(kind);
const asKind = (part: PartId): TermId => id<"term">(part);

/** A piece as it is claimed, with one part of each kind and nothing seen. */
const unseenPiece = ({ form, region, date, examined }: PlanAsk, parts: readonly TermId[]): Piece => ({
  ...{ title: "", invented: true, examined },
  attribution: { date, form, ...(region === undefined ? {} : { region }) },
  parts: parts.map((kind) => ({ id: asPart(kind), label: kind, kind })),
  ...{ observations: [], together: [], separate: [] },
});
