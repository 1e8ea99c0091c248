import type { Piece } from "../../domain/examination.ts";
import { id, type TermId } from "../../domain/ids.ts";
import { chainsOf } from "../chains.ts";
import type { Check } from "../check.ts";
import { contextAt } from "../context.ts";
import { readExceptions } from "../exceptions.ts";
import type { Steps } from "../in-one-go.ts";
import type { KnownGraph } from "../known-graph.ts";
import { readParts } from "../piece-parts.ts";
import { placesWithin } from "../places.ts";
import { type View, viewFrom } from "../view.ts";
import { placesApart } from "./places-apart.ts";

/**
 * Looks at the graph from each part of a piece of the form on which nothing has been seen yet. The views of a check are those of
 * the places that its feature tells apart. A step is a part at a place.
 */
export function* readChecks(
  { form, region }: { readonly form: TermId; readonly region?: TermId },
  kinds: readonly TermId[],
  graph: KnownGraph,
): Steps<(part: TermId, feature: TermId) => Check> {
  const piece: Piece = {
    ...{ title: "", invented: true, examined: 0, attribution: { date: "" } },
    parts: kinds.map((kind) => ({ id: id(kind), label: kind, kind })),
    ...{ observations: [], together: [], separate: [] },
  };
  const parts = readParts(piece);
  yield;
  const places = placesWithin(graph, region);
  yield;
  const views = new Map<string, View>();
  const shared = new Map<TermId, Pick<Check, "views" | "chains" | "exceptions">>();
  for (const kind of kinds) {
    const exceptions = readExceptions(graph, piece, parts, id(kind));
    const seen: View[] = [];
    for (const place of places) {
      yield;
      const context = contextAt(graph, place, { form, part: kind, exceptions });
      const view = views.get(context.key) ?? viewFrom(context, graph);
      views.set(context.key, view);
      seen.push(view);
    }
    shared.set(kind, { views: seen, chains: chainsOf(seen), exceptions });
  }
  const apart = placesApart(places, graph);
  return (part, feature) => {
    const from = shared.get(part);
    if (from === undefined) throw new Error(`${part} is no part of the sheet`);
    return {
      ...{ id: feature, feature, seen: "present", sureness: "sure", observation: undefined },
      ...{ part: id(part), claimed: undefined, elsewhere: false },
      ...from,
      views: apart(feature).map((place) => from.views[place] as View),
    };
  };
}
