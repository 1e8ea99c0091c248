import { useMemo } from "react";
import { type EachTerm, useEveryTerm } from "#web/shared/terms/use-every-term.ts";

export interface KindsOfPart {
  readonly all: readonly EachTerm[];
  /** True if one is the other or lies within it, either way: a saw mark on drawer bottoms concerns a drawer. */
  readonly areKin: (a: string, b: string) => boolean;
}

/** All kinds of part the graph knows, read once. */
export function useKindsOfPart(): KindsOfPart {
  const all = useEveryTerm("PART");
  return useMemo(() => {
    const broader = new Map(all.map((kind) => [kind.id, kind.broader?.id]));
    const isWithin = (inner: string | undefined, outer: string): boolean =>
      inner !== undefined && (inner === outer || isWithin(broader.get(inner), outer));
    return { all, areKin: (a, b) => isWithin(a, b) || isWithin(b, a) };
  }, [all]);
}
