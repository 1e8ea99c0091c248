import type { Hardness } from "../domain/claim.ts";
import type { ClaimId, TermId } from "../domain/ids.ts";
import type { Derivation, Place } from "../domain/report.ts";
import { ALL_YEARS, join, meet, NO_YEARS, type Years, yearsToJson } from "../domain/years.ts";
import { type Holding, heldClaims } from "./atoms.ts";
import { type Bound, type ClosedList, countsFor } from "./bound.ts";
import { yearsSince } from "./claim-years.ts";
import type { KnownGraph } from "./known-graph.ts";
import type { View } from "./view.ts";

export type By = Extract<Derivation, { kind: "derived" }>["by"];

/** A node of a derivation with the years it gives. */
export interface Step {
  readonly node: Derivation;
  readonly years: Years;
}

/** What a derivation may use, and how it is told. */
export interface Telling {
  readonly support: Holding;
  readonly level: Hardness;
  readonly graph: KnownGraph;
  /** Where the nodes say that they hold; null if they hold at every place of the piece. */
  readonly place: Place | null;
}

/**
 * Derives the years of a term at one place from a support alone. Refs count up from 1 in the order told; a term that was told
 * before is a `told` node. Undefined if the support bounds nothing there.
 */
export function deriveAtPlace(view: View, feature: TermId, telling: Telling): Step | undefined {
  const { level, graph, place } = telling;
  const kept = new Set(telling.support.map(({ key }) => key));
  const isKept = (held: Holding): boolean => held.every(({ key }) => kept.has(key));
  const told = new Map<TermId, Step>();
  const passing = new Set<TermId>();
  let refs = 0;

  function ofTerm(term: TermId): Step | undefined {
    const before = told.get(term);
    if (before?.node.kind === "derived") return { ...before, node: { kind: "told", ref: before.node.ref } };
    if (before || passing.has(term)) return before;
    passing.add(term);
    const { bounds, lists } = view.resolve(term);
    const step = allOf(term, "all-of", [
      ...bounds
        .filter((bound) => countsFor(bound.hardness, level) && isKept(bound.held))
        .map((bound) => () => ofBound(bound, term)),
      ...lists
        .filter((list) => countsFor(list.hardness, level) && isKept([heldClaims([list.claim.id])]))
        .map((list) => () => ofList(list, term)),
    ]);
    passing.delete(term);
    if (step) told.set(term, step);
    return step;
  }

  function node(term: TermId, by: By, from: readonly Derivation[], years: Years): Step {
    return {
      node: {
        kind: "derived",
        ref: ++refs,
        term,
        place,
        by,
        hardness: level,
        years: yearsToJson(years),
        from,
      },
      years,
    };
  }

  function allOf(term: TermId, by: By, makers: readonly (() => Step | undefined)[]): Step | undefined {
    const steps = makers.flatMap((make) => make() ?? []);
    if (steps.length < 2) return steps[0];
    return node(
      term,
      by,
      steps.map((step) => step.node),
      steps.map(({ years }) => years).reduce(meet, ALL_YEARS),
    );
  }

  function ofList({ claim }: ClosedList, term: TermId): Step | undefined {
    const ways = claim.ways.map((way) =>
      allOf(
        term,
        "way",
        way.map((needed) => () => ofTerm(needed)),
      ),
    );
    const bounded = ways.filter((way) => way !== undefined);
    if (bounded.length < ways.length) return undefined;
    const years = bounded.map((way) => way.years).reduce(join, NO_YEARS);
    const cited: Derivation = { kind: "claim", claim: claim.id, years: yearsToJson(years) };
    return node(term, "any-way", [cited, ...bounded.map((way) => way.node)], years);
  }

  function ofBound(bound: Bound, term: TermId): Step {
    const years = bound.outer;
    const leaves = bound.claims.map((claim) => leaf(claim, bound));
    if (bound.by === "claim") return { node: leaves[0] as Derivation, years };
    if (bound.by !== "fallback") return node(term, bound.by, leaves, years);
    const assumption = bound.assumption as string;
    return { node: { kind: "assumption", assumption, years: yearsToJson(years), from: leaves }, years };
  }

  function leaf(claim: ClaimId, bound: Bound): Derivation {
    const found = graph.claimOf(claim);
    let years = bound.outer;
    if (bound.by !== "claim" && "when" in found && found.relation !== "not found in") {
      const said = graph.yearsOf(found);
      years = bound.by === "fallback" ? yearsSince(said.existsFrom.outer) : said.outer;
    }
    return { kind: "claim", claim, years: yearsToJson(years) };
  }

  return ofTerm(feature);
}
