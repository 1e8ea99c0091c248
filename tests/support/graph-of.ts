import type { Graph } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Standing } from "#server/domain/graph-view.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";

/** A graph of things that come one by one. */
export function graphOf(things: Iterable<Standing>): Graph {
  const terms = new Map<string, Term>();
  const claims = new Map<string, Claim>();
  const sources = new Map<string, Source>();
  for (const { kind, thing } of things)
    if (kind === "term") terms.set(thing.id, thing);
    else if (kind === "claim") claims.set(thing.id, thing);
    else sources.set(thing.id, thing);
  return { terms, claims, sources };
}
