import type { Change } from "../../domain/change.ts";
import { type GraphView, idOfEdit, type Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";

/** A graph in memory that changes are laid on, one after the other. */
export interface StandingGraph {
  readonly view: GraphView;
  apply(change: Change): void;
}

/** An empty graph. */
export function standingGraph(): StandingGraph {
  const things = new Map<string, Standing>();
  const namers = new Map<string, Set<string>>();
  const find = (key: string): unknown => things.get(key)?.thing;
  const keysNamedBy = (standing: Standing): readonly string[] =>
    namesOf(standing).map(({ kind, id }) => `${kind} ${id}`);
  return {
    view: {
      findTerm: (id) => find(`term ${id}`) as ReturnType<GraphView["findTerm"]>,
      findClaim: (id) => find(`claim ${id}`) as ReturnType<GraphView["findClaim"]>,
      findSource: (id) => find(`source ${id}`) as ReturnType<GraphView["findSource"]>,
      namersOf: (kind, id) =>
        [...(namers.get(`${kind} ${id}`) ?? [])].flatMap((key) => things.get(key) ?? []),
    },
    apply: (change) => {
      for (const edit of change) {
        const key = `${edit.kind} ${idOfEdit(edit)}`;
        const before = things.get(key);
        if (before) for (const named of keysNamedBy(before)) namers.get(named)?.delete(key);
        things.delete(key);
        if (!edit.after) continue;
        const standing = { kind: edit.kind, thing: edit.after } as Standing;
        things.set(key, standing);
        for (const named of keysNamedBy(standing)) {
          const known = namers.get(named);
          if (known) known.add(key);
          else namers.set(named, new Set([key]));
        }
      }
    },
  };
}
