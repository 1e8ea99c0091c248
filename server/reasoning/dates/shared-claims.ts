import type { Citation } from "../../domain/claim.ts";
import { compareText, firstDifference } from "../../domain/compare.ts";
import type { ClaimId, SourceId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { KnownGraph } from "../known-graph.ts";
import { claimIsRight, type Given } from "./right-odds.ts";

/** A claim, or a source that alone stands behind several, that more than one thing seen rests on. */
interface Shared {
  readonly id: ClaimId | SourceId;
  readonly claims: readonly ClaimId[];
  readonly uses: number;
  readonly right: number;
}

export interface Worlds {
  readonly worlds: readonly { readonly weight: number; readonly given: Given }[];
  readonly tried: readonly (ClaimId | SourceId)[];
  readonly takenApart: readonly (ClaimId | SourceId)[];
}

/**
 * Assignments of right and wrong to what several things seen share, at most 2^`odds.worlds`: the most shared first, then the least
 * sure, then by id. The rest is taken apart: each thing seen for itself. `used` has the claims of each thing seen.
 */
export function worldsOf(
  used: readonly ReadonlySet<ClaimId>[],
  graph: KnownGraph,
  odds: AssumedOdds,
): Worlds {
  const found = sharedBy(used, graph, odds);
  const tried: Shared[] = [];
  for (const one of found)
    if (
      tried.length < odds.worlds &&
      !one.claims.some((id) => tried.some(({ claims }) => claims.includes(id)))
    )
      tried.push(one);
  let worlds: { weight: number; given: Map<ClaimId, 0 | 1> }[] = [{ weight: 1, given: new Map() }];
  for (const { claims, right } of tried)
    worlds = worlds.flatMap(({ weight, given }) =>
      ([1, 0] as const).map((is) => ({
        weight: weight * (is === 1 ? right : 1 - right),
        given: new Map([...given, ...claims.map((id) => [id, is] as const)]),
      })),
    );
  const apart = found.filter(
    (one) =>
      !tried.includes(one) && !one.claims.every((id) => tried.some(({ claims }) => claims.includes(id))),
  );
  return {
    worlds: worlds.filter(({ weight }) => weight > 0),
    tried: tried.map(({ id }) => id),
    takenApart: apart.map(({ id }) => id).sort(compareText),
  };
}

function sharedBy(
  used: readonly ReadonlySet<ClaimId>[],
  graph: KnownGraph,
  odds: AssumedOdds,
): readonly Shared[] {
  const claims = [...new Set(used.flatMap((each) => [...each]))].sort(compareText);
  const bySource = Map.groupBy(claims, (id) => soleSource(graph.claimOf(id).citations));
  const countUses = (ids: readonly ClaimId[]): number =>
    used.filter((each) => ids.some((id) => each.has(id))).length;
  const all: Shared[] = claims.map((id) => ({
    ...{ id, claims: [id], uses: countUses([id]) },
    right: claimIsRight(id, graph, odds),
  }));
  for (const [source, ids] of bySource)
    if (source !== undefined && ids.length > 1)
      all.push({
        ...{ id: source, claims: ids, uses: countUses(ids) },
        right: Math.min(...ids.map((id) => claimIsRight(id, graph, odds))),
      });
  return all
    .filter(({ uses }) => uses > 1)
    .sort((a, b) => firstDifference(b.uses - a.uses, a.right - b.right, compareText(a.id, b.id)));
}

function soleSource(citations: readonly Citation[]): SourceId | undefined {
  const [first] = citations;
  return citations.length === 1 && first?.basis === "published" ? first.source : undefined;
}
