import { ASSUMED } from "../../domain/assumptions.ts";
import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import { compareIds } from "../../domain/compare.ts";
import type { Piece } from "../../domain/examination.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import { type Known, neighbourhoodAfter } from "../../domain/neighbourhood-after.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Store } from "../../ports/store.ts";
import { askFor } from "../../reasoning/ask-for.ts";

/** What a piece is examined on before a change of a revision, and what it would be examined on after it. */
export async function bothNeighbourhoods(
  store: Store,
  piece: Piece,
  change: Change,
  beside: Beside,
  revision: RevisionNumber,
): Promise<{ readonly now: Neighbourhood; readonly after: Neighbourhood }> {
  const ask = askFor(piece, ASSUMED);
  const now = await store.neighbourhood({ ...ask, at: revision });
  let known = knownIn(now, beside);
  let after = neighbourhoodAfter(known, change, ask, revision);
  while ("missing" in after) {
    // Whatever region they are asked in, all claims on the terms themselves come with them.
    const more = await store.neighbourhood({
      seeds: after.missing,
      regions: ask.regions,
      maxDepth: 0,
      at: revision,
    });
    known = joined(known, more);
    after = neighbourhoodAfter(known, change, ask, revision);
  }
  return { now, after };
}

/** What a neighbourhood may need after the change that it need not hold before it. */
export interface Beside {
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
}

/** Terms that the change names, with what is broader, and the exceptions of claims that it puts. */
export async function readBeside(store: Store, change: Change, at: RevisionNumber): Promise<Beside> {
  const put = change.flatMap((edit) =>
    edit.kind === "claim" && edit.after?.status === "accepted" ? [edit.after] : [],
  );
  const claims = new Map<ClaimId, Claim>();
  let of: readonly ClaimId[] = put.map(({ id }) => id);
  while (of.length > 0) {
    const found = await readAll((page) => store.listClaims({ of }, page, at));
    const fresh = found.filter(({ id, status }) => status === "accepted" && !claims.has(id));
    for (const claim of fresh) claims.set(claim.id, claim);
    of = fresh.map(({ id }) => id);
  }
  const terms = new Map<TermId, Term>();
  let wanted: readonly TermId[] = [
    ...[...put, ...claims.values()].flatMap(namedTerms),
    ...change.flatMap((edit) => (edit.kind === "term" ? [edit.before?.broader, edit.after?.broader] : [])),
  ].filter((term) => term !== undefined);
  while (wanted.length > 0) {
    const found = await store.terms([...new Set(wanted)], at);
    for (const [id, term] of found) terms.set(id, term);
    wanted = [...found.values()].flatMap(({ broader }) => broader ?? []).filter((term) => !terms.has(term));
  }
  return { terms: [...terms.values()], claims: [...claims.values()].sort(compareIds) };
}

const knownIn = ({ terms, claims, depths }: Neighbourhood, beside: Beside): Known => ({
  terms: new Map([...beside.terms, ...terms].map((term) => [term.id, term])),
  claims: new Map([...beside.claims, ...claims].map((claim) => [claim.id, claim])),
  whole: new Set(depths.keys()),
});

const joined = (known: Known, { terms, claims, depths }: Neighbourhood): Known => ({
  terms: new Map([...known.terms, ...terms.map((term) => [term.id, term] as const)]),
  claims: new Map([...known.claims, ...claims.map((claim) => [claim.id, claim] as const)]),
  whole: new Set([...known.whole, ...depths.keys()]),
});
