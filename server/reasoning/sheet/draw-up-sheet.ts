import { ASSUMED } from "../../domain/assumptions.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Move } from "../../domain/looking.ts";
import { expectedParts, isOnEveryPiece, partsFor, partsToLookAt } from "../../domain/parts-of-form.ts";
import { POSITIONS, type Position } from "../../domain/position.ts";
import { hasOpening, positionOf } from "../../domain/position-of.ts";
import { ancestors, type Broader, broaderTerms } from "../../domain/region.ts";
import type { Term } from "../../domain/term.ts";
import { claimedYears } from "../check.ts";
import type { Steps } from "../in-one-go.ts";
import type { KnownGraph } from "../known-graph.ts";
import { isOfOtherForm } from "./is-of-other-form.ts";
import { chooseTellings, compareTellings } from "./order-tellings.ts";
import { readChecks } from "./read-checks.ts";
import { type Chosen, type SheetSection, shareOut } from "./share-out.ts";
import type { Telling } from "./telling.ts";
import { weighFeature } from "./weigh-feature.ts";

/** For what a sheet is drawn up. */
export interface SheetAsk {
  readonly form: TermId;
  readonly region?: TermId;
  /** EDTF that can be read as an event. */
  readonly date?: string;
  /** Features told in full of one part. */
  readonly each: number;
}

/** A sheet to take to a piece: what to look for on its parts, in the order in which one goes round it. */
export interface Sheet {
  /** Expected parts of the form, as it lists them. */
  readonly parts: readonly TermId[];
  readonly sections: readonly SheetSection[];
}

/** What is looked for on a piece as a whole may be of one form alone. */
const WHOLE = "part.whole";
/** Features named again on a part. */
const MOST_AGAIN = 6;

/**
 * Draws up a field sheet (F1 to F6). `terms` holds all forms, kinds of part and features; `graph` what is known of the
 * features on the form's parts. A step is a feature weighed on a part for a place.
 */
export function* drawUpSheet(ask: SheetAsk, terms: readonly Term[], graph: KnownGraph): Steps<Sheet> {
  const forms = new Map(terms.filter(({ kind }) => kind === "form").map((term) => [term.id, term]));
  const kinds = new Set(terms.filter(({ kind }) => kind === "part").map(({ id }) => id));
  const broader = broaderTerms(terms);
  const expected = expectedParts(ask.form, forms);
  const parts = partsToLookAt(expected, (part) => kinds.has(part));
  const around = { broader, isOpening: hasOpening(expected, broader) };
  const homeOf = (part: TermId): Position => positionOf(part, undefined, around);
  yield;
  const features = featuresByPart(parts, terms, broader);
  yield;
  const checksOn = yield* readChecks(ask, parts, graph);
  const claimed = ask.date === undefined ? undefined : claimedYears(ask.date, ASSUMED);

  function* tellingOn(part: TermId, feature: Term): Steps<Telling | undefined> {
    if (part === WHOLE && isOfOtherForm(feature.id, ask.form, forms, graph)) return undefined;
    const weighed = yield* weighFeature(checksOn(part, feature.id), { graph, claimed, region: ask.region });
    if (weighed === undefined) return undefined;
    const move = feature.looking?.move;
    return {
      ...weighed,
      ...{ part, feature: feature.id, position: positionOf(part, move, around) },
      sight: sightOf(move),
      kinds: feature.parts?.length ?? 0,
    };
  }

  const told = new Set<TermId>();
  const chosen: Chosen[] = [];
  for (const part of POSITIONS.flatMap((position) => parts.filter((part) => homeOf(part) === position))) {
    const all: Telling[] = [];
    for (const feature of features.get(part) ?? []) {
      const telling = yield* tellingOn(part, feature);
      if (telling !== undefined) all.push(telling);
      yield;
    }
    const now = all.filter(({ sight }) => sight !== "sample");
    const entries = chooseTellings(
      now.filter(({ feature }) => !told.has(feature)),
      ask.each,
      broader,
    );
    const again = now
      .filter(({ feature, tells }) => told.has(feature) && tells !== "record")
      .sort(compareTellings)
      .slice(0, MOST_AGAIN);
    for (const { feature } of entries) told.add(feature);
    chosen.push({ part, entries, again, all: all.length });
  }
  const inOrder = (position: Position): readonly Chosen[] => {
    const isHere = ({ part }: Chosen): boolean =>
      ancestors(part, broader).some((kind) => homeOf(kind) === position);
    const sorted = parts.flatMap((part) => chosen.find((one) => one.part === part) ?? []);
    return [...sorted.filter(isHere), ...sorted.filter((one) => !isHere(one))];
  };
  return { parts: expected, sections: shareOut(POSITIONS.map((position) => [position, inOrder(position)])) };
}

/** How much it takes to see something: `sample` has no place on a sheet. */
function sightOf(move: Move | undefined): Telling["sight"] {
  if (move === "sample taken") return "sample";
  return move === "something unfastened" || move === undefined ? "later" : "now";
}

/** The features that are looked for on each part of the form. */
export function featuresByPart(
  parts: readonly TermId[],
  terms: readonly Term[],
  broader: Broader,
): ReadonlyMap<TermId, readonly Term[]> {
  const kinds = terms.filter(({ kind }) => kind === "part").map(({ id }) => id);
  const where = new Map(kinds.map((kind) => [kind, partsFor(kind, parts, broader)]));
  const found = new Map(parts.map((part): [TermId, Term[]] => [part, []]));
  for (const feature of terms.filter(({ kind }) => kind === "feature")) {
    // What has particular parts belongs where there is one of them, though every piece has joints and labels.
    const own = feature.parts?.filter((kind) => !isOnEveryPiece(kind)) ?? [];
    if (own.length > 0 && own.every((kind) => where.get(kind)?.length === 0)) continue;
    for (const part of new Set(feature.parts?.flatMap((kind) => where.get(kind) ?? [])))
      found.get(part)?.push(feature);
  }
  return found;
}
