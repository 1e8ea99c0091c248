import { compareIds } from "../domain/compare.ts";
import type { Piece, Seen, Sureness } from "../domain/examination.ts";
import type { ObservationId, PartId, TermId } from "../domain/ids.ts";
import type { Assumptions, Place } from "../domain/report.ts";
import type { Span } from "../domain/years.ts";
import { type Chains, chainsOf } from "./chains.ts";
import { mustReadDating, padUnder } from "./claim-years.ts";
import { contextAt } from "./context.ts";
import { type Exceptions, readExceptions } from "./exceptions.ts";
import type { KnownGraph } from "./known-graph.ts";
import { type PieceParts, readParts } from "./piece-parts.ts";
import { placesWithin } from "./places.ts";
import { type View, viewFrom } from "./view.ts";

/** One thing to hold against the graph: an observation, or the form, style or maker that is claimed (E22). */
export interface Check {
  readonly id: string;
  readonly feature: TermId;
  readonly seen: Seen;
  readonly sureness: Sureness;
  readonly observation: ObservationId | undefined;
  readonly part: PartId | undefined;
  readonly claimed: "form" | "style" | "maker" | undefined;
  /** One view a place: those of the piece in their order, or of the part's own region. */
  readonly views: readonly View[];
  /** All chains that the claims make, seen from these views. */
  readonly chains: Chains;
  /** Exceptions as they stand on this very part; views are shared between parts on which the same ones hold. */
  readonly exceptions: Exceptions;
  /** The part has a region of its own, and is judged there (E15). */
  readonly elsewhere: boolean;
}

/** A piece made ready: what is claimed, where it can be from, and everything to check. */
export interface Subject {
  readonly piece: Piece;
  readonly graph: KnownGraph;
  readonly assumptions: Assumptions;
  /** The claimed years, taken loosely. */
  readonly claimed: Span;
  readonly places: readonly Place[];
  readonly parts: PieceParts;
  readonly checks: readonly Check[];
}

/**
 * Reads a piece against a graph. The order of parts and observations in it makes no difference. Places are those that `whole` tells
 * apart: the graph itself, or the one that it is left of.
 */
export function readSubject(
  piece: Piece,
  graph: KnownGraph,
  assumptions: Assumptions,
  whole: KnownGraph = graph,
): Subject {
  const { attribution } = piece;
  const parts = readParts(piece);
  const places = placesWithin(whole, attribution.region);
  const views = new Map<string, View>();
  const viewsOf = (part: PartId | undefined, exceptions: Exceptions): readonly View[] => {
    const found = piece.parts.find(({ id }) => id === part);
    const own = found?.region === undefined ? places : placesWithin(whole, found.region);
    return own.map((place) => {
      const of = { form: attribution.form, part: found?.kind, exceptions };
      const context = contextAt(graph, place, of);
      const view = views.get(context.key) ?? viewFrom(context, graph);
      views.set(context.key, view);
      return view;
    });
  };
  const byPart = new Map(
    [undefined, ...piece.parts.map(({ id }) => id)].map((part) => {
      const exceptions = readExceptions(graph, piece, parts, part);
      const seen = viewsOf(part, exceptions);
      return [part, { views: seen, chains: chainsOf(seen), exceptions }] as const;
    }),
  );
  const from = (part: PartId | undefined): Pick<Check, "views" | "chains" | "exceptions"> => {
    const found = byPart.get(part);
    if (found === undefined) throw new Error(`there is no part ${part}`);
    return found;
  };
  const elsewhere = new Set(piece.parts.filter(({ region }) => region !== undefined).map(({ id }) => id));
  const observed = [...piece.observations].sort(compareIds).map(
    ({ id, part, feature, seen, sureness }): Check => ({
      ...{ id, feature, seen, sureness, part, observation: id, claimed: undefined },
      ...from(part),
      elsewhere: elsewhere.has(part),
    }),
  );
  const claimed = (["form", "style", "maker"] as const).flatMap((of): Check[] => {
    const feature = attribution[of];
    if (feature === undefined) return [];
    return [
      {
        ...{ id: `attr.${of}`, feature, seen: "present", sureness: "sure", claimed: of },
        ...{ observation: undefined, part: undefined, elsewhere: false },
        ...from(undefined),
      },
    ];
  });
  return {
    ...{ piece, graph, assumptions, places, parts },
    claimed: claimedYears(attribution.date, assumptions),
    checks: [...claimed, ...observed],
  };
}

/** The hull of the claimed date with its pads. */
export function claimedYears(date: string, assumptions: Assumptions): Span {
  const { begin, end, padBegin, padEnd } = mustReadDating(date, "event");
  return [begin[0] - padUnder(padBegin, assumptions), end[1] + padUnder(padEnd, assumptions)];
}
