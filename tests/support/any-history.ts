import fc from "fast-check";
import type { Change, Graph } from "#server/domain/change.ts";
import { applyChange } from "#server/domain/change-graph.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { TermId } from "#server/domain/ids.ts";
import type { NeighbourhoodAsk } from "#server/domain/neighbourhood.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Term } from "#server/domain/term.ts";
import { adding, aTerm, replacing, withdrawing } from "./build-change.ts";
import { aClaim } from "./build-claim.ts";

/** Changes that can be made one after the other, with the graph after each; `graphs[0]` is the empty one. */
export interface AnyHistory {
  readonly changes: readonly Change[];
  readonly graphs: readonly Graph[];
}

const FEATURES = ["feature.a", "feature.b", "feature.c", "feature.d"];
const TOOLS = ["tool.a", "tool.b", "tool.c", "tool.d", "tool.e"];
const REGIONS = ["region.0", "region.1", "region.2", "region.3", "region.4", "region.5"];
const SUBJECTS = [...FEATURES, ...TOOLS];
const pick = <Item>(items: readonly Item[]) => fc.constantFrom(...items);

/** Each region's broader one is an earlier one or none: a forest. */
const anyRegions: fc.Arbitrary<readonly Term[]> = fc
  .tuple(...REGIONS.map((_, n) => fc.option(fc.nat(Math.max(0, n - 1)), { nil: undefined, freq: 4 })))
  .map((broader) =>
    REGIONS.map((name, n) => {
      const above = n === 0 ? undefined : broader[n];
      return aTerm(name, above === undefined ? {} : { broader: REGIONS[above] as string });
    }),
  );

const region = fc.option(pick(REGIONS), { nil: undefined, freq: 2 });
const status = fc.constantFrom("accepted", "accepted", "accepted", "proposed", "rejected");

/** The claim of a number: it may be an exception of an earlier one, so there are no cycles of exceptions. */
const anyClaim = (number: number): fc.Arbitrary<Claim> => {
  const name = (n: number) => `claim.${String(n).padStart(2, "0")}`;
  const requires = fc.record({
    relation: fc.constant("requires" as const),
    subject: pick(SUBJECTS),
    region,
    status,
    ways: fc.array(fc.array(pick([...TOOLS, ...FEATURES]), { minLength: 1, maxLength: 2 }), {
      minLength: 1,
      maxLength: 2,
    }),
  });
  const introduced = fc.record({
    relation: fc.constant("introduced" as const),
    subject: pick(SUBJECTS),
    region,
    status,
    when: fc.constant("1790"),
  });
  const voidWhen = fc.record({
    relation: fc.constant("void when" as const),
    of: fc.nat(Math.max(0, number - 1)).map(name),
    condition: pick(FEATURES),
    status,
  });
  const sketch = fc.oneof(
    { weight: 4, arbitrary: requires },
    { weight: 1, arbitrary: introduced },
    ...(number > 0 ? [{ weight: 2, arbitrary: voidWhen }] : []),
  );
  return sketch.map(({ region, ...rest }: { region?: string | undefined } & object) =>
    aClaim({
      ...(rest as { relation: "requires" }),
      id: name(number),
      ...(region === undefined ? {} : { region }),
    }),
  );
};

const anyClaims = fc
  .integer({ min: 1, max: 16 })
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, number) => anyClaim(number))));

/**
 * A first graph, then a few changes of it: claims said differently or withdrawn, regions moved, terms added with a claim that
 * leads there, and withdrawn again with it.
 */
export const anyHistory: fc.Arbitrary<AnyHistory> = fc
  .record({
    regions: anyRegions,
    claims: anyClaims,
    later: fc.array(fc.tuple(fc.nat(15), anyClaims, anyRegions, fc.nat(4)), { maxLength: 4 }),
  })
  .map(({ regions, claims, later }) => {
    const first = adding(...SUBJECTS.map((name) => aTerm(name)), ...regions, ...claims);
    const changes: Change[] = [];
    const graphs: Graph[] = [{ terms: new Map(), claims: new Map(), sources: new Map() }];
    const make = (change: Change): void => {
      const graph = applyChange(graphs.at(-1) as Graph, change);
      if (isProblem(graph)) throw new Error(graph.message);
      changes.push(change);
      graphs.push(graph);
    };
    make(first);
    for (const [number, others, moved, what] of later) {
      const { claims: standing, terms } = graphs.at(-1) as Graph;
      const before = [...standing.values()][number % Math.max(1, standing.size)];
      const added = [...terms.values()].find(({ id }) => id.startsWith(ADDED));
      const lead = [...standing.values()].find(({ id }) => id === LEAD);
      if (what === 3 && added === undefined) {
        const term = aTerm(`${ADDED}${number}`);
        const [subject = "", region = ""] = [SUBJECTS[number % SUBJECTS.length], REGIONS[number % 6]];
        make(adding(term, aClaim({ id: LEAD, relation: "requires", subject, region, ways: [[term.id]] })));
      } else if (what === 4 && added !== undefined && lead !== undefined) make(withdrawing(lead, added));
      else if (what === 0) make(moved.flatMap((region) => replacing(terms.get(region.id) as Term, region)));
      else if (before !== undefined && what === 1) {
        const after = others.find((claim) => claim.id === before.id && isAllowed(claim, standing));
        if (after !== undefined) make(replacing(before, after));
      } else if (before !== undefined && isFree(before, standing)) make(withdrawing(before));
    }
    return { changes, graphs };
  });

/** A term and a claim added later come between those that were there. */
const ADDED = "tool.b-";
const LEAD = "claim.05-lead";

const isAllowed = (claim: Claim, standing: ReadonlyMap<string, Claim>): boolean =>
  claim.relation !== "void when" || standing.has(claim.of);
const isFree = (claim: Claim, standing: ReadonlyMap<string, Claim>): boolean =>
  [...standing.values()].every((other) => other.relation !== "void when" || other.of !== claim.id);

/** Something to ask of such a graph; some seeds and regions do not exist. */
export const anyAsk: fc.Arbitrary<Omit<NeighbourhoodAsk, "at">> = fc.record({
  seeds: fc.array(pick([...SUBJECTS, "feature.none"]), { maxLength: 4 }).map((names) => names as TermId[]),
  regions: fc.array(pick([...REGIONS, "region.none"]), { maxLength: 2 }).map((names) => names as TermId[]),
  maxDepth: fc.nat(4),
});
