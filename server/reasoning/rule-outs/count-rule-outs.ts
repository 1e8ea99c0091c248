import type { ClaimId, PartId } from "../../domain/ids.ts";
import type { RuleOutCount } from "../../domain/report.ts";
import { claimsHeld } from "../atoms.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Clash } from "./clash.ts";

/** One rule-out among all there are. */
export interface Counted {
  readonly clash: Pick<Clash, "parts" | "held">;
}

/** Up to a number of rule-outs, with all of them counted by part and by claim; `first` is the foremost of those taken. */
export interface Listed<One> {
  readonly listed: readonly One[];
  readonly byPart: readonly { readonly part: PartId; readonly count: number; readonly first: One }[];
  readonly byClaim: readonly { readonly claim: ClaimId; readonly count: number; readonly first: One }[];
}

/**
 * Takes the first rule-outs in their order; the foremost of each part and of each claim come before others, so that nothing that
 * rules out goes unmentioned because something else does so more often.
 */
export function listRuleOuts<One extends Counted>(
  all: readonly One[],
  most: number,
  graph: KnownGraph,
): Listed<One> {
  const byPart = groupsOf(all, ({ clash }) => clash.parts);
  const byClaim = groupsOf(all, ({ clash }) =>
    claimsHeld(clash.held).filter((claim) => graph.claimOf(claim).relation !== "requires"),
  );
  const listed = all.length <= most ? all : takeFirst(all, most, [...byPart, ...byClaim]);
  const isListed = new Set(listed);
  const firstOf = (of: readonly One[]) => of.find((one) => isListed.has(one));
  return {
    listed,
    byPart: byPart.flatMap(([part, of]) => {
      const first = firstOf(of);
      return first === undefined ? [] : [{ part, count: of.length, first }];
    }),
    byClaim: byClaim.flatMap(([claim, of]) => {
      const first = firstOf(of);
      return first === undefined ? [] : [{ claim, count: of.length, first }];
    }),
  };
}

function takeFirst<One>(
  all: readonly One[],
  most: number,
  groups: readonly (readonly [string, readonly One[]])[],
): readonly One[] {
  const foremost = new Set(groups.map(([, [first]]) => first as One));
  const inTurn = new Set([...all.filter((one) => foremost.has(one)), ...all]);
  const taken = new Set([...inTurn].slice(0, most));
  return all.filter((one) => taken.has(one));
}

/** The most frequent name first, then by name. */
function groupsOf<Name extends string, One>(
  all: readonly One[],
  namesOf: (one: One) => readonly Name[],
): readonly (readonly [Name, readonly One[]])[] {
  const groups = new Map<Name, One[]>();
  for (const one of all)
    for (const name of namesOf(one)) {
      const group = groups.get(name);
      if (group) group.push(one);
      else groups.set(name, [one]);
    }
  return [...groups].sort(([a, x], [b, y]) => y.length - x.length || (a < b ? -1 : 1));
}

/** The counts as the report has them. */
export const countsOf = <One extends Counted>(
  { byPart, byClaim }: Listed<One>,
  idOf: (one: One) => string,
): Pick<RuleOutCount, "byPart" | "byClaim"> => ({
  byPart: byPart.map(({ part, count, first }) => ({ part, count, first: idOf(first) })),
  byClaim: byClaim.map(({ claim, count, first }) => ({ claim, count, first: idOf(first) })),
});
