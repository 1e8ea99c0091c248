import type { Change, Edit, Graph } from "./change.ts";
import type { Claim } from "./claim.ts";
import { namesOf } from "./names-of.ts";
import type { Source } from "./source.ts";
import type { Term } from "./term.ts";

/** A thing of the graph with its kind. */
export type Standing =
  | { readonly kind: "term"; readonly thing: Term }
  | { readonly kind: "claim"; readonly thing: Claim }
  | { readonly kind: "source"; readonly thing: Source };

/** What a check has to see of a graph: enough for a store to answer from its indexes, however large the graph is. */
export interface GraphView {
  readonly findTerm: (id: string) => Term | undefined;
  readonly findClaim: (id: string) => Claim | undefined;
  readonly findSource: (id: string) => Source | undefined;
  /** Everything that names the thing. Asked only for things that a change withdraws. */
  readonly namersOf: (kind: Edit["kind"], id: string) => Iterable<Standing>;
  /**
   * Whether what stands under an id has this canonical JSON, or nothing stands where none is given; for a view that knows
   * without the thing. Else it is found by the thing.
   */
  readonly stands?: (kind: Edit["kind"], id: string, text: string | undefined) => boolean;
}

/** A whole graph as a view. */
export function viewOfGraph(graph: Graph): GraphView {
  return {
    findTerm: (id) => graph.terms.get(id),
    findClaim: (id) => graph.claims.get(id),
    findSource: (id) => graph.sources.get(id),
    namersOf: (kind, id) =>
      standingIn(graph).filter((standing) =>
        namesOf(standing).some((named) => named.kind === kind && named.id === id),
      ),
  };
}

/** The graph as it will be when the edits are made, without copying it. */
export function viewAfter(view: GraphView, change: Change): GraphView {
  const edited = {
    term: new Map<string, Edit>(),
    claim: new Map<string, Edit>(),
    source: new Map<string, Edit>(),
  };
  for (const edit of change) edited[edit.kind].set(idOfEdit(edit), edit);
  const find =
    <Thing>(kind: Edit["kind"], before: (id: string) => Thing | undefined) =>
    (id: string): Thing | undefined => {
      const edit = edited[kind].get(id);
      return edit ? (edit.after as Thing | undefined) : before(id);
    };
  return {
    findTerm: find("term", view.findTerm),
    findClaim: find("claim", view.findClaim),
    findSource: find("source", view.findSource),
    namersOf: (kind, id) =>
      [...view.namersOf(kind, id)].filter((namer) => !edited[namer.kind].has(namer.thing.id)),
  };
}

/** The id that an edit is about; empty for an edit of nothing. */
export const idOfEdit = (edit: Edit): string => (edit.after ?? edit.before)?.id ?? "";

/** Everything in a graph: terms, claims, sources. */
export function standingIn(graph: Graph): readonly Standing[] {
  return [
    ...[...graph.terms.values()].map((thing): Standing => ({ kind: "term", thing })),
    ...[...graph.claims.values()].map((thing): Standing => ({ kind: "claim", thing })),
    ...[...graph.sources.values()].map((thing): Standing => ({ kind: "source", thing })),
  ];
}
