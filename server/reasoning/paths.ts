import type { Relation } from "../domain/claim.ts";
import { compareText, firstDifference } from "../domain/compare.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { Path } from "../domain/report.ts";
import { isEmpty, join, meet, type Span, type Years, yearsApart, yearsToJson } from "../domain/years.ts";
import type { Bound } from "./bound.ts";
import type { Chain } from "./chains.ts";
import type { Check } from "./check.ts";
import type { KnownGraph } from "./known-graph.ts";
import { compareWeights, type Weighed } from "./order.ts";
import { type ChainReading, readChain } from "./read-chain.ts";

interface Question {
  readonly check: Check;
  readonly claimed: Span;
  readonly graph: KnownGraph;
  /** Claims of the support: their paths are listed first. */
  readonly first: readonly ClaimId[];
  readonly atMost: number;
}

/** How many paths lead from a check to its dates, and the first of them, weightiest first (E21, E23). */
export function pathsOf({ check, claimed, graph, first, atMost }: Question): {
  readonly pathCount: number;
  readonly paths: readonly Path[];
} {
  const listed: (Weighed & { readonly path: Path; readonly text: string })[] = [];
  for (const chain of check.chains.list(check.feature, new Set(first))) {
    if (listed.length >= atMost) break;
    const readings = check.views.map((view) => readChain(view, chain, claimed));
    const reading = readings.reduce(mildest);
    const years = readings.map((at) => at.years).reduce(join);
    const path = pathFrom(chain, reading, years, claimed, graph);
    const text = [...path.via, path.dated ?? "", ...path.terms].join(" ");
    listed.push({ path, years, text, label: reading.label, hardness: reading.hardness });
  }
  const paths = listed
    .sort((a, b) => firstDifference(compareWeights(a, b, claimed), compareText(a.text, b.text)))
    .map(({ path }) => path);
  return { pathCount: check.chains.count(check.feature), paths };
}

const MILDNESS: readonly Path["label"][] = ["consistent", "silent", "way-excluded", "contradictory"];

/** What a path comes to at several places: it excludes only what it excludes at each, and no harder than at the softest. */
function mildest(a: ChainReading, b: ChainReading): ChainReading {
  const mildness = MILDNESS.indexOf(a.label) - MILDNESS.indexOf(b.label);
  if (mildness !== 0) return mildness < 0 ? a : b;
  return a.hardness === "practice" ? a : b.hardness === "practice" ? b : a;
}

function pathFrom(chain: Chain, reading: ChainReading, years: Years, claimed: Span, graph: KnownGraph): Path {
  const { bound, label, hardness, reason } = reading;
  const ends = endClaims(chain, bound);
  const dated = ends.find((claim) => !LEADS_ON.includes(graph.claimOf(claim).relation));
  const via = [...chain.steps.map(({ list }) => list.id), ...ends.filter((claim) => claim !== dated)];
  const isOut = isEmpty(meet(years, [claimed]));
  const gapYears = isOut ? yearsApart(years, [claimed]) : undefined;
  return {
    via,
    terms: chain.terms,
    ...(dated === undefined ? {} : { dated }),
    assumptions: bound?.assumption === undefined ? [] : [bound.assumption],
    cites: [...new Set([...via, ...(dated === undefined ? [] : [dated])])].flatMap((claim) =>
      graph.claimOf(claim).citations.map((citation) => ({
        claim,
        basis: citation.basis,
        ...(citation.basis === "published" ? { source: citation.source, locator: citation.locator } : {}),
      })),
    ),
    label,
    ...(hardness === undefined ? {} : { hardness }),
    years: yearsToJson(years),
    ...(gapYears === undefined ? {} : { gapYears }),
    ...(reason === undefined ? {} : { reason }),
  };
}

/** Relations that date nothing by themselves: the way on, and the way from one region to another. */
const LEADS_ON: readonly Relation[] = ["requires", "spread to"];

/** The claims at the end of a chain. */
const endClaims = ({ end }: Chain, bound: Bound | undefined): readonly ClaimId[] =>
  end.kind === "claim" ? [end.claim] : end.kind === "assumed" ? (bound?.claims ?? []) : [];
