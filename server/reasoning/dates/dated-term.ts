import type { ClaimId } from "../../domain/ids.ts";
import { ALL_YEARS, meet, type Years } from "../../domain/years.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { Resolved } from "../resolve.ts";
import { type Grid, type Slopes, slopesOf } from "./curve.ts";
import { eventsOf, type KnownEvents } from "./events-of.ts";

/** What the dates of a term itself say of how common it was, whatever the odds. */
export interface DatedTerm extends Pick<KnownEvents, "missing" | "endIsPhysical"> {
  readonly slopes: Slopes;
  /** Outside these it was not there. */
  readonly possible: Years;
  readonly claims: readonly ClaimId[];
  /** Some of it rests on "nobody had it earlier". */
  readonly assumes: boolean;
}

const REGIONAL: readonly string[] = ["confined to", "not found in"];

/** Reads the own dates of a term; what it requires is left aside. */
export function datedTerm({ bounds }: Pick<Resolved, "bounds">, graph: KnownGraph, grid: Grid): DatedTerm {
  const events = eventsOf(bounds, graph, grid);
  const isRegional = (claim: ClaimId): boolean => REGIONAL.includes(graph.claimOf(claim).relation);
  return {
    ...{ missing: events.missing, endIsPhysical: events.endIsPhysical, slopes: slopesOf(events, grid) },
    possible: bounds
      .filter(({ hardness, claims }) => hardness === "physical" || claims.some(isRegional))
      .reduce<Years>((years, { outer }) => meet(years, outer), ALL_YEARS),
    claims: bounds.flatMap(({ claims }) => claims),
    assumes: bounds.some(({ by }) => by === "fallback"),
  };
}
