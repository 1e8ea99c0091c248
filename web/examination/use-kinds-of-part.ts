import { useQuery } from "@apollo/client/react";
import { useMemo } from "react";
import { KindsOfPartDocument, type KindsOfPartQuery } from "./KindsOfPart.graphql.ts";

export type KindOfPart = KindsOfPartQuery["terms"]["edges"][number]["node"];

export interface KindsOfPart {
  readonly all: readonly KindOfPart[];
  /** True if one is the other or lies within it, either way: a saw mark on drawer bottoms concerns a drawer. */
  readonly areKin: (a: string, b: string) => boolean;
}

/** All kinds of part the graph knows, read once. */
export function useKindsOfPart(): KindsOfPart {
  const { data } = useQuery(KindsOfPartDocument);
  return useMemo(() => {
    const all = data?.terms.edges.map((edge) => edge.node) ?? [];
    const broader = new Map(all.map((kind) => [kind.id, kind.broader?.id]));
    const isWithin = (inner: string | undefined, outer: string): boolean =>
      inner !== undefined && (inner === outer || isWithin(broader.get(inner), outer));
    return { all, areKin: (a, b) => isWithin(a, b) || isWithin(b, a) };
  }, [data]);
}
