import type { Hardness } from "../domain/claim.ts";
import type { Derivation } from "../domain/report.ts";
import { ALL_YEARS, join, NO_YEARS, type Years, yearsToJson } from "../domain/years.ts";
import type { Holding } from "./atoms.ts";
import type { Check } from "./check.ts";
import { deriveAtPlace } from "./derive-at-place.ts";
import type { KnownGraph } from "./known-graph.ts";
import type { View } from "./view.ts";

/**
 * Why a support gives its years, as a tree (E20): leaves are cited claims or a marked assumption, inner nodes say what follows for
 * which term. Places where the same follows are told once. Undefined if the support bounds nothing.
 */
export function derive(
  { feature, views }: Check,
  support: Holding,
  level: Hardness,
  graph: KnownGraph,
): Derivation | undefined {
  if (support.length === 0) return undefined;
  const at = (view: View, place: View["context"]["place"] | null) =>
    deriveAtPlace(view, feature, { support, level, graph, place });
  const everywhere = new Map<string, { readonly view: View; readonly years: Years }>();
  for (const view of views) {
    const step = at(view, null);
    const text = JSON.stringify(step?.node ?? null);
    if (!everywhere.has(text)) everywhere.set(text, { view, years: step?.years ?? ALL_YEARS });
  }
  const distinct = [...everywhere.values()];
  const [first] = distinct;
  if (first === undefined) return undefined;
  const place = views.length === 1 ? first.view.context.place : null;
  if (distinct.length === 1) return numbered(at(first.view, place)?.node);
  const years = distinct.map((found) => found.years).reduce(join, NO_YEARS);
  return numbered({
    ...{ kind: "derived", ref: 0, term: feature, place: null, by: "places", hardness: level },
    years: yearsToJson(years),
    from: distinct.flatMap(({ view }) => at(view, view.context.place)?.node ?? []),
  });
}

/** The same tree with its refs counted up from 1 in the order in which a reader meets them. */
function numbered(root: Derivation | undefined): Derivation | undefined {
  let next = 0;
  const renumber = (node: Derivation, names: Map<number, number>): Derivation => {
    switch (node.kind) {
      case "claim":
        return node;
      case "told":
        return { kind: "told", ref: names.get(node.ref) ?? node.ref };
      case "assumption":
        return { ...node, from: node.from.map((below) => renumber(below, names)) };
      case "derived": {
        const ref = ++next;
        names.set(node.ref, ref);
        // Each place is told by itself, so that its refs are its own.
        const from = node.from.map((below) =>
          renumber(below, node.by === "places" ? new Map<number, number>() : names),
        );
        return { ...node, ref, from };
      }
    }
  };
  return root && renumber(root, new Map());
}
