import type { RuleOut, RuleOutCount } from "../../domain/report.ts";
import type { KnownGraph } from "../known-graph.ts";

/** All rule-outs in their order, counted by part and by claim, and up to `most` of them. */
export interface ListedRuleOuts {
  readonly listed: readonly RuleOut[];
  readonly counted: Pick<RuleOutCount, "count" | "byPart" | "byClaim">;
}

/**
 * Counts rule-outs and takes the first of them; the foremost of each part and of each claim come before others, so that nothing
 * that rules out goes unmentioned because something else does so more often.
 */
export function listRuleOuts(all: readonly RuleOut[], most: number, graph: KnownGraph): ListedRuleOuts {
  const byPart = groupsOf(all, ({ parts }) => parts);
  const byClaim = groupsOf(all, ({ atoms }) =>
    [
      ...new Set(
        atoms.flatMap((atom) =>
          atom.kind === "claim" ? [atom.claim] : atom.kind === "rivals" ? atom.claims : [],
        ),
      ).values(),
    ].filter((claim) => graph.claimOf(claim).relation !== "requires"),
  );
  const foremost = new Set([...byPart, ...byClaim].map(([, [first]]) => first as RuleOut));
  const inTurn = new Set([...all.filter((one) => foremost.has(one)), ...all]);
  const kept = new Set([...inTurn].slice(0, most));
  const listed = all.length <= most ? all : all.filter((one) => kept.has(one));
  const isListed = new Set(listed);
  const count = <Name extends string>(groups: readonly (readonly [Name, readonly RuleOut[]])[]) =>
    groups.flatMap(([name, of]) => {
      const first = of.find((one) => isListed.has(one));
      return first === undefined ? [] : [{ name, count: of.length, first: first.id }];
    });
  return {
    listed,
    counted: {
      count: all.length,
      byPart: count(byPart).map(({ name: part, ...rest }) => ({ part, ...rest })),
      byClaim: count(byClaim).map(({ name: claim, ...rest }) => ({ claim, ...rest })),
    },
  };
}

/** The most frequent name first, then by name. */
function groupsOf<Name extends string>(
  all: readonly RuleOut[],
  namesOf: (one: RuleOut) => readonly Name[],
): readonly (readonly [Name, readonly RuleOut[]])[] {
  const groups = new Map<Name, RuleOut[]>();
  for (const one of all)
    for (const name of namesOf(one)) {
      const group = groups.get(name);
      if (group) group.push(one);
      else groups.set(name, [one]);
    }
  return [...groups].sort(([a, x], [b, y]) => y.length - x.length || (a < b ? -1 : 1));
}
