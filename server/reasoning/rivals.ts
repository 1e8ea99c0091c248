import type { Dated, Hardness } from "../domain/claim.ts";
import { scopeKey } from "../domain/scope.ts";
import { join, meet, sameYears } from "../domain/years.ts";
import { heldClaims } from "./atoms.ts";
import type { Alternative, Bound } from "./bound.ts";
import type { Allowed } from "./claim-years.ts";
import type { KnownGraph } from "./known-graph.ts";

/**
 * The bounds of dated claims of one subject, relation and hardness that nobody overrides (E6). Claims of one scope that state the
 * same end or ends and disagree become one bound: outer is the union of what each allows, inner the intersection. Claims that agree
 * stand each for itself, and so do a begin and an end stated apart.
 */
export function boundsOf(claims: readonly Dated[], hardness: Hardness, graph: KnownGraph): readonly Bound[] {
  const [only] = claims;
  if (claims.length === 1 && only !== undefined)
    return [boundOf([{ ...allowed(graph.yearsOf(only)), claims: [only.id] }], hardness)];
  const scopes = Map.groupBy(claims, ({ scope }) => scopeKey(scope));
  return [...scopes.values()].flatMap((rivals) =>
    statingTheSame(rivals, graph).flatMap((group) => {
      const alternatives = alternativesOf(group, graph);
      const agree = alternatives.every((one) => isSame(one, alternatives[0] as Alternative));
      return agree
        ? group.map((claim) => boundOf([{ ...graph.yearsOf(claim), claims: [claim.id] }], hardness))
        : [boundOf(alternatives, hardness)];
    }),
  );
}

const isSame = (a: Allowed, b: Allowed): boolean =>
  sameYears(a.outer, b.outer) && sameYears(a.inner, b.inner);

function boundOf(alternatives: readonly Alternative[], hardness: Hardness): Bound {
  const claims = [...new Set(alternatives.flatMap((alternative) => alternative.claims))].sort();
  return {
    kind: "bound",
    by: claims.length === 1 ? "claim" : "rivals",
    hardness,
    outer: alternatives.map(({ outer }) => outer).reduce(join),
    inner: alternatives.map(({ inner }) => inner).reduce(meet),
    held: [heldClaims(claims)],
    claims,
    alternatives: claims.length === 1 ? [] : alternatives,
  };
}

/**
 * Groups that speak of the same end or ends. A span with both ends and claims of one end are one group if they disagree on an end,
 * so that a disputed end never counts as settled; if they agree, each stands for itself.
 */
function statingTheSame(claims: readonly Dated[], graph: KnownGraph): readonly (readonly Dated[])[] {
  const of = Map.groupBy(claims, (claim) => graph.yearsOf(claim).states);
  const [both, begins, ends] = [of.get("both") ?? [], of.get("begin") ?? [], of.get("end") ?? []];
  const disputed =
    both.length > 0 &&
    (disagree([...both, ...begins], begins.length, (claim) => graph.yearsOf(claim).since) ||
      disagree([...both, ...ends], ends.length, (claim) => graph.yearsOf(claim).until));
  return (disputed ? [[...both, ...begins, ...ends]] : [both, begins, ends]).filter(
    ({ length }) => length > 0,
  );
}

const disagree = (claims: readonly Dated[], oneEnded: number, end: (claim: Dated) => Allowed): boolean =>
  oneEnded > 0 && claims.some((claim) => !isSame(end(claim), end(claims[0] as Dated)));

/** What a group can mean: each claim by itself; in a mixed group each span, and each begin with each end. */
function alternativesOf(group: readonly Dated[], graph: KnownGraph): readonly Alternative[] {
  const alone = (claims: readonly Dated[]): Alternative[] =>
    claims.map((claim) => ({ ...allowed(graph.yearsOf(claim)), claims: [claim.id] }));
  const of = Map.groupBy(group, (claim) => graph.yearsOf(claim).states);
  if (of.size === 1) return alone(group);
  const both = of.get("both") ?? [];
  const begins = of.get("begin") ?? both;
  const ends = of.get("end") ?? both;
  return [
    ...alone(both),
    ...begins.flatMap((begin) =>
      ends.map((end) => {
        const [since, until] = [graph.yearsOf(begin).since, graph.yearsOf(end).until];
        return {
          outer: meet(since.outer, until.outer),
          inner: meet(since.inner, until.inner),
          claims: [...new Set([begin.id, end.id])].sort(),
        };
      }),
    ),
  ];
}

const allowed = ({ outer, inner }: Allowed): Allowed => ({ outer, inner });
