import type { SpreadTo } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { Evidence } from "./evidence.ts";
import type { Disagreement, DisagreementRule } from "./rule.ts";

/**
 * [Q6] `spread to` claims that lead back to where they set out after more than no years, so that the thing arrives later than
 * it was there. Through each claim that takes time the shortest circle is looked for; every such circle passes one.
 */
export const spreadInACircle: DisagreementRule = {
  id: "spread-in-a-circle",
  find: (evidence) =>
    [...evidence.spreads].flatMap(([term, spreads]) => {
      const circles = spreads
        .filter(({ years }) => years[0] > 0)
        .map((spread) => shortestCircle(spread, spreads, evidence))
        .filter((circle) => circle.length > 0);
      const found = circles.map((circle) => circleFound(term, circle));
      return [...new Map(found.map((one) => [one.id, one])).values()];
    }),
};

/** It has arrived at `next.from` when it has arrived at `spread.to` and the one lies within the other. */
const leadsOn = (spread: SpreadTo, next: SpreadTo, { broader }: Evidence): boolean =>
  isWithin(next.from, spread.to, broader);

/** The fewest claims from this one back to it, this one first; none if nothing leads back. */
function shortestCircle(
  start: SpreadTo,
  spreads: readonly SpreadTo[],
  evidence: Evidence,
): readonly SpreadTo[] {
  const cameFrom = new Map<SpreadTo, SpreadTo | undefined>([[start, undefined]]);
  for (const spread of cameFrom.keys()) {
    if (leadsOn(spread, start, evidence)) return wayTo(spread, cameFrom);
    for (const next of spreads)
      if (!cameFrom.has(next) && leadsOn(spread, next, evidence)) cameFrom.set(next, spread);
  }
  return [];
}

function wayTo(last: SpreadTo, cameFrom: ReadonlyMap<SpreadTo, SpreadTo | undefined>): readonly SpreadTo[] {
  const way: SpreadTo[] = [];
  for (let spread: SpreadTo | undefined = last; spread; spread = cameFrom.get(spread)) way.unshift(spread);
  return way;
}

function circleFound(term: TermId, circle: readonly SpreadTo[]): Disagreement {
  const ids = circle.map(({ id }) => id);
  // One circle, wherever it was entered: begun at the claim whose id is least.
  const at = ids.indexOf([...ids].sort()[0] as (typeof ids)[number]);
  const claims = [...ids.slice(at), ...ids.slice(0, at)];
  return {
    id: `spread-in-a-circle:${claims.join(":")}`,
    ...{ rule: "spread-in-a-circle", term, claims },
    region: (circle[at] as SpreadTo).from,
    years: circle.reduce((sum, { years }) => sum + years[0], 0),
  };
}
