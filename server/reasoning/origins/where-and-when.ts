import type { Hardness } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import type { Part } from "../../domain/examination.ts";
import type { PartId, TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { Place } from "../../domain/report.ts";
import { ALL_YEARS, meet, NO_YEARS, type Years, yearsBetween } from "../../domain/years.ts";
import { countsFor } from "../bound.ts";
import type { Check, Subject } from "../check.ts";
import { contextAt } from "../context.ts";
import { placesWithin } from "../places.ts";
import { type View, viewFrom } from "../view.ts";
import { yearsAlgebra } from "../years-under.ts";

/** Parts that cannot be of different origin, with the years that all of them allow at each place of the graph. */
export interface WhereAndWhen {
  readonly parts: readonly PartId[];
  readonly years: readonly Years[];
}

/** What counts: possible or usual years, with or without the assumption that nobody had a thing earlier than is known. */
export interface Counting {
  readonly level: Hardness;
  readonly withFallback: boolean;
}

/**
 * Reads where and when parts can be from, over all places of the graph, whatever is claimed of the piece but its form: those that are
 * together as one, sorted by the first of them. A part from a region of its own is from there.
 */
export function whereAndWhenReader(subject: Subject): (counting: Counting) => readonly WhereAndWhen[] {
  const { piece, graph, checks, parts } = subject;
  const places = placesWithin(
    graph,
    undefined,
    piece.parts.flatMap(({ region }) => region ?? []),
  );
  const until = yearsBetween(Number.NEGATIVE_INFINITY, piece.examined);
  const seen = checks.filter((check) => check.part !== undefined && check.seen === "present");
  const views = new Map<string, View>();
  const viewOf = ({ exceptions }: Check, part: Part, place: Place): View => {
    const of = { form: piece.attribution.form, part: part.kind, exceptions };
    const context = contextAt(graph, place, of);
    const view = views.get(context.key) ?? viewFrom(context, graph);
    views.set(context.key, view);
    return view;
  };
  const placed = [...piece.parts]
    .sort((a, b) => compareText(a.id, b.id))
    .map((part) => ({
      part,
      at: places.map((place) =>
        isFrom(place, part.region, subject)
          ? seen
              .filter((check) => check.part === part.id)
              .map((check) => ({ view: viewOf(check, part, place), feature: check.feature }))
          : undefined,
      ),
    }));

  return ({ level, withFallback }) => {
    const algebra = yearsAlgebra(
      ({ by, hardness, outer }) =>
        countsFor(hardness, level) && (withFallback || by !== "fallback") ? outer : ALL_YEARS,
      ({ hardness }) => countsFor(hardness, level),
    );
    const readers = new Map<View, (term: TermId) => Years>();
    const yearsIn = (view: View): ((term: TermId) => Years) => {
      const reader = readers.get(view) ?? view.under(algebra);
      readers.set(view, reader);
      return reader;
    };
    const years = placed.map(({ part, at }) => ({
      part,
      years: at.map((looked) =>
        looked === undefined
          ? NO_YEARS
          : looked.reduce((left, { view, feature }) => meet(left, yearsIn(view)(feature)), until),
      ),
    }));
    return [...Map.groupBy(years, ({ part }) => parts.groupOf(part.id)).values()].map((members) => ({
      parts: members.map(({ part }) => part.id),
      years: places.map((_, i) =>
        members.reduce<Years>((left, one) => meet(left, one.years[i] as Years), until),
      ),
    }));
  };
}

const isFrom = ({ region }: Place, own: TermId | undefined, { graph }: Subject): boolean =>
  own === undefined || (region !== null && isWithin(region, own, graph.broader));
