import type { TermId } from "../../domain/ids.ts";
import { areKin } from "../../domain/one-of-a-family.ts";
import type { KnownGraph } from "../known-graph.ts";

/** Whether two features ask one thing: they are of one family, or are signs of one cause, which count once. */
export type IsKin = (a: TermId, b: TermId) => boolean;

export function kinIn(graph: KnownGraph): IsKin {
  const known = new Map<TermId, ReadonlySet<string>>();
  const causesOf = (feature: TermId): ReadonlySet<string> => {
    const found =
      known.get(feature) ??
      new Set(
        graph
          .claimsOf(feature)
          .flatMap((claim) => (claim.relation === "indicates" ? (claim.cause ?? []) : [])),
      );
    known.set(feature, found);
    return found;
  };
  return (a, b) => areKin(a, b, graph.broader) || [...causesOf(a)].some((cause) => causesOf(b).has(cause));
}
