import type { Part } from "../../domain/examination.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Check, Subject } from "../check.ts";
import { type LinkedChecks, linkByTool } from "./link-by-tool.ts";
import type { Factor, Group } from "./model.ts";
import type { Placing } from "./placing.ts";
import type { Given } from "./right-odds.ts";
import { signFactors } from "./sign-factors.ts";
import { statePrior } from "./state-prior.ts";

/** One group of parts at a place of the piece, with some claims taken as right or wrong. Groups that come out the same are one object. */
export type GroupReader = (place: number, given: Given) => Group;

interface Standing {
  readonly checks: readonly LinkedChecks[];
  /** Claims that any curve there rests on. */
  readonly used: ReadonlySet<ClaimId>;
}

/** Reads the parts that are together; `looked` has all that was looked for on the piece. */
export function groupReader(
  parts: readonly Part[],
  looked: readonly Check[],
  { graph }: Subject,
  odds: AssumedOdds,
  { placedAt, factors, grid }: Placing,
): GroupReader {
  const byPart = parts.map(({ id }) => looked.filter(({ part }) => part === id));
  const { signs, aged } = signFactors(
    looked.filter((check) => byPart.some((checks) => checks.includes(check))),
    graph,
    odds,
    grid,
  );
  const plain = {
    parts: parts.map(({ id }) => id),
    ...{ prior: statePrior(parts, odds, graph.broader), signs },
  };
  const standings = new Map<number, Standing>();
  const known = new Map<readonly Factor[], Group>();
  const asked = new Map<string, Group>();

  function standAt(place: number): Standing {
    const before = standings.get(place);
    if (before) return before;
    const placed = byPart.map((checks) => checks.map((check) => placedAt(check, place)));
    const used = placed.flat().flatMap(({ check, currency }) => [...currency(check.feature).claims]);
    const standing: Standing = { checks: placed.map(linkByTool), used: new Set(used) };
    standings.set(place, standing);
    return standing;
  }

  return (place, given) => {
    const { checks, used } = standAt(place);
    const key = [place, ...[...given].filter(([claim]) => used.has(claim)).flat()].join(" ");
    const before = asked.get(key);
    if (before) return before;
    const read = factors(checks, { graph, odds, given, aged });
    const group = known.get(read) ?? { ...plain, factors: read };
    known.set(read, group);
    asked.set(key, group);
    return group;
  };
}
