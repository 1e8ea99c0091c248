import type { Claim } from "../domain/claim.ts";
import type { GraphView } from "../domain/graph-view.ts";
import type { ClaimId, SourceId, TermId } from "../domain/ids.ts";
import type { Source } from "../domain/source.ts";
import type { Term } from "../domain/term.ts";
import type { ImportTarget } from "../ports/import-target.ts";

/** What a file names and does not bring, as it stands in the store. */
export type Outside = Pick<GraphView, "findTerm" | "findClaim" | "findSource">;

/** Ids asked for at once. */
const AT_ONCE = 5_000;

/**
 * Reads what is named by these ids, and what is above it in the tree of terms or behind it among exceptions, as far as
 * that goes: what `isInside` is in the file.
 */
export async function readOutside(
  store: ImportTarget,
  named: {
    readonly term: Iterable<string>;
    readonly claim: Iterable<string>;
    readonly source: Iterable<string>;
  },
  isInside: (id: string) => boolean,
): Promise<Outside> {
  const terms = await follow(
    named.term,
    (ids) => store.terms(ids as readonly TermId[]),
    (term: Term) => term.broader,
    isInside,
  );
  const claims = await follow(
    named.claim,
    (ids) => store.claims(ids as readonly ClaimId[]),
    (claim: Claim) => (claim.relation === "void when" ? claim.of : undefined),
    isInside,
  );
  const sources = await follow(
    named.source,
    (ids) => store.sources(ids as readonly SourceId[]),
    (_: Source) => undefined,
    isInside,
  );
  return {
    findTerm: (id) => terms.get(id),
    findClaim: (id) => claims.get(id),
    findSource: (id) => sources.get(id),
  };
}

async function follow<Thing>(
  ids: Iterable<string>,
  read: (ids: readonly string[]) => Promise<ReadonlyMap<string, Thing>>,
  next: (thing: Thing) => string | undefined,
  isInside: (id: string) => boolean,
): Promise<ReadonlyMap<string, Thing>> {
  const found = new Map<string, Thing>();
  const asked = new Set<string>();
  const wanted = [...new Set(ids)];
  while (wanted.length > 0) {
    const some = wanted.splice(0, AT_ONCE);
    for (const id of some) asked.add(id);
    for (const [id, thing] of await read(some)) {
      found.set(id, thing);
      const further = next(thing);
      if (further === undefined || asked.has(further) || isInside(further)) continue;
      asked.add(further);
      wanted.push(further);
    }
  }
  return found;
}
