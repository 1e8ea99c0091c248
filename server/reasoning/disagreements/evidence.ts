import { ASSUMED } from "../../domain/assumptions.ts";
import {
  type Claim,
  type Dated,
  EVENT_RELATIONS,
  PERIOD_RELATIONS,
  type SpreadTo,
} from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Term } from "../../domain/term.ts";
import { type KnownGraph, knowGraph } from "../known-graph.ts";

/** A whole graph made ready for the rules. Only accepted claims; every list is sorted by id. */
export interface Evidence extends Pick<KnownGraph, "broader" | "yearsOf"> {
  /** Dated claims by subject. */
  readonly dated: ReadonlyMap<TermId, readonly Dated[]>;
  /** Claims of how long something took to spread, by subject. */
  readonly spreads: ReadonlyMap<TermId, readonly SpreadTo[]>;
  /** Claims that name exactly this region as their scope, or as an end of a spread. */
  readonly byRegion: ReadonlyMap<TermId, readonly Claim[]>;
}

/** Indexes a graph in one pass over its claims. Dates are widened by the pads that the engine assumes. */
export function indexEvidence(terms: readonly Term[], claims: readonly Claim[]): Evidence {
  const graph = knowGraph({ terms, claims, cutAt: [] }, ASSUMED);
  const dated = new Map<TermId, Dated[]>();
  const spreads = new Map<TermId, SpreadTo[]>();
  const byRegion = new Map<TermId, Claim[]>();
  for (const claim of graph.claims) {
    if (isDated(claim)) append(dated, claim.subject, claim);
    if (claim.relation === "spread to") append(spreads, claim.subject, claim);
    for (const region of regionsOf(claim)) append(byRegion, region, claim);
  }
  return { broader: graph.broader, yearsOf: graph.yearsOf, dated, spreads, byRegion };
}

const DATED: readonly string[] = [...EVENT_RELATIONS, ...PERIOD_RELATIONS];
/** Whether a claim says when. */
export const isDated = (claim: Claim): claim is Dated => DATED.includes(claim.relation);

/** The regions that a claim names exactly: as its scope, or as an end of a spread. */
export function regionsOf(claim: Claim): ReadonlySet<TermId> {
  if (claim.relation === "spread to") return new Set([claim.from, claim.to]);
  const region = "scope" in claim ? claim.scope.region : undefined;
  return new Set(region === undefined ? [] : [region]);
}

function append<Row>(lists: Map<TermId, Row[]>, key: TermId, row: Row): void {
  const list = lists.get(key);
  if (list) list.push(row);
  else lists.set(key, [row]);
}
