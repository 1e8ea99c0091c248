import type { Claim, ConfinedTo, Dated, Hardness, NotFoundIn, Requires } from "../domain/claim.ts";
import { compareText } from "../domain/compare.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import { isWithin } from "../domain/region.ts";
import type { SetAside } from "../domain/report.ts";
import { applies } from "../domain/scope.ts";
import { isAllYears, NO_YEARS } from "../domain/years.ts";
import { arrivalBound, introducedAt } from "./arrival.ts";
import { heldClaims } from "./atoms.ts";
import type { Bound, ClosedList } from "./bound.ts";
import type { Allowed } from "./claim-years.ts";
import type { Context } from "./context.ts";
import { earliestAnywhereBound } from "./earliest-anywhere.ts";
import { hardnessOf, type KnownGraph } from "./known-graph.ts";
import { nearest } from "./nearest-scope.ts";
import { boundsOf } from "./rivals.ts";

/** A term in one context: what of its claims counts there, and what does not and why. */
export interface Resolved {
  readonly term: TermId;
  readonly bounds: readonly Bound[];
  readonly lists: readonly ClosedList[];
  /** Lists that are not closed, and bound nothing. */
  readonly open: readonly Requires[];
  /** Dated claims in force whose date bounds nothing. */
  readonly endless: readonly Dated[];
  readonly setAside: ReadonlyMap<ClaimId, SetAside>;
  /** The bound that a claim in force stands in. */
  readonly boundBy: ReadonlyMap<ClaimId, Bound>;
}

type Bounding = Requires | Dated | ConfinedTo | NotFoundIn;
const DATING = ["introduced", "common from", "common until", "discontinued", "current", "active"] as const;
const HARDNESSES: readonly Hardness[] = ["physical", "practice"];

const isDating = (claim: Claim): claim is Dated => DATING.some((relation) => relation === claim.relation);
const isBounding = (claim: Claim): claim is Bounding =>
  isDating(claim) || ["requires", "confined to", "not found in"].includes(claim.relation);

/** Sorts out the claims about a term for one context (E3 to E6, E10 to E13). */
export function resolve(term: TermId, context: Context, graph: KnownGraph): Resolved {
  const setAside = new Map<ClaimId, SetAside>();
  const claims = graph
    .claimsOf(term)
    .filter(isBounding)
    .filter((claim) => counts(claim, context, graph, setAside));

  const dating = claims.filter(isDating);
  const alike = Map.groupBy(dating, (claim) => `${claim.relation} ${hardnessOf(claim)}`);
  const dated = [...alike.values()].flatMap((group) =>
    boundsOf(withoutOverridden(group, graph, setAside), hardnessOf(group[0] as Dated), graph),
  );
  const regional = claims.flatMap((claim) => regionalBound(claim, context, graph));
  const bounds = [...dated, ...regional, ...assumedBegin(term, context, graph)];

  const requires = claims.filter((claim) => claim.relation === "requires");
  const closed = HARDNESSES.flatMap((hardness) =>
    withoutOverridden(
      requires.filter((claim) => claim.closed && claim.hardness === hardness),
      graph,
      setAside,
    ),
  );
  const open = requires.filter((claim) => !claim.closed);
  for (const { id } of open) setAside.set(id, { claim: id, reason: "open-list" });
  return {
    term,
    bounds,
    lists: closed
      .map((claim) => ({ kind: "list" as const, hardness: claim.hardness, claim }))
      .sort((a, b) => compareText(a.claim.id, b.claim.id)),
    open,
    endless: dating
      .filter(({ id }) => !setAside.has(id))
      .filter((claim) => isAllYears(graph.yearsOf(claim).outer)),
    setAside,
    boundBy: new Map(
      bounds.flatMap((bound) => (bound.by === "fallback" ? [] : bound.claims.map((claim) => [claim, bound]))),
    ),
  };
}

/** Whether a claim is in scope and void by no exception; if not, notes why. */
function counts(
  claim: Bounding,
  context: Context,
  graph: KnownGraph,
  setAside: Map<ClaimId, SetAside>,
): boolean {
  if (!applies(claim.scope, context.where, graph.broader)) {
    setAside.set(claim.id, { claim: claim.id, reason: "out-of-scope" });
    return false;
  }
  const defeat = context.exceptions.defeatsOf(claim.id)[0];
  if (defeat === undefined) return true;
  const { exception, observation } = defeat;
  setAside.set(claim.id, { claim: claim.id, reason: "defeated", by: exception, observation });
  return false;
}

function withoutOverridden<Alike extends Dated | Requires>(
  claims: readonly Alike[],
  graph: KnownGraph,
  setAside: Map<ClaimId, SetAside>,
): readonly Alike[] {
  const found = nearest(claims, graph.broader);
  for (const [claim, by] of found.overridden) setAside.set(claim, { claim, reason: "overridden", by });
  return found.nearest;
}

function regionalBound(claim: Bounding, { where }: Context, graph: KnownGraph): readonly Bound[] {
  if (claim.relation === "not found in") return [single(claim, graph.yearsOf(claim))];
  if (claim.relation !== "confined to") return [];
  const { region } = where;
  const inside =
    region !== undefined && claim.regions.some((allowed) => isWithin(region, allowed, graph.broader));
  return inside ? [] : [single(claim, { outer: NO_YEARS, inner: NO_YEARS })];
}

const single = (claim: ConfinedTo | NotFoundIn, { outer, inner }: Allowed): Bound => ({
  kind: "bound",
  by: "claim",
  hardness: hardnessOf(claim),
  ...{ outer, inner },
  held: [heldClaims([claim.id])],
  claims: [claim.id],
  alternatives: [],
});

/** What stands for a begin where nothing introduced covers the place: spread from elsewhere, else the fall-back. */
function assumedBegin(term: TermId, context: Context, graph: KnownGraph): readonly Bound[] {
  if (introducedAt(term, context, graph).length > 0) return [];
  const bound = arrivalBound(term, context, graph) ?? earliestAnywhereBound(term, context, graph);
  return bound === undefined ? [] : [bound];
}
