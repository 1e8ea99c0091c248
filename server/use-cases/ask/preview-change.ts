import { ASSUMED } from "../../domain/assumptions.ts";
import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import { compareIds } from "../../domain/compare.ts";
import type { Examination } from "../../domain/examination.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Neighbourhood } from "../../domain/neighbourhood.ts";
import { type Known, neighbourhoodAfter } from "../../domain/neighbourhood-after.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import { type Shifts, shiftsBetween } from "../../domain/shifts.ts";
import type { Term } from "../../domain/term.ts";
import { nextTurn } from "../../ports/next-turn.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Standings } from "../../ports/standings.ts";
import type { Store } from "../../ports/store.ts";
import { askFor } from "../../reasoning/ask-for.ts";
import { verdictsOn } from "../../reasoning/verdicts-on.ts";

/** What a change would do to the stored examinations, were it made now. Nothing is stored. */
export interface Preview {
  /** The revision it was laid over. */
  readonly revision: RevisionNumber;
  /** How many examinations were looked at: all that it can touch. */
  readonly looked: number;
  /** Those of which something would be said otherwise, by id. */
  readonly shifted: readonly { readonly examination: Examination; readonly shifts: Shifts }[];
  /** Examinations that were left, because `stop` said so; none means that nothing else would change. */
  readonly left: number;
}

interface Ports {
  readonly store: Store;
  readonly standings: Standings;
}

/** Milliseconds of work after which others are let go on. */
const SLICE = 12;

/**
 * Which stored examinations a change of the newest revision would shift, and from what to what: exactly what examining
 * them all before and after it would show (K10). The change is one that the store would take.
 */
export async function previewChange(ports: Ports, change: Change, stop?: AbortSignal): Promise<Preview> {
  const { store, standings } = ports;
  const revision = (await store.newestRevision())?.number ?? 0;
  const touched = [...(await standings.touchedBy(change))].sort();
  const beside = await readBeside(store, change, revision);
  const shifted: { examination: Examination; shifts: Shifts }[] = [];
  let looked = 0;
  let began = performance.now();
  for (const id of touched) {
    if (stop?.aborted) break;
    looked++;
    const examination = await store.examination(id);
    if (examination === undefined || examination.deleted) continue;
    const shifts = await shiftsOf(ports, examination, change, beside, revision);
    if (shifts) shifted.push({ examination, shifts });
    if (performance.now() - began < SLICE) continue;
    await nextTurn();
    began = performance.now();
  }
  return { revision, looked, shifted, left: touched.length - looked };
}

async function shiftsOf(
  { store, standings }: Ports,
  { id, version, piece }: Examination,
  change: Change,
  beside: Beside,
  revision: RevisionNumber,
): Promise<Shifts | undefined> {
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
  const standing = standings.find(id);
  const isKnown = standing?.upToDate && standing.version === version && standing.knownTo === revision;
  const before = isKnown ? standing.verdicts : verdictsOn(piece, now);
  return shiftsBetween(before, verdictsOn(piece, after));
}

/** What a neighbourhood may need after the change that it need not hold before it. */
interface Beside {
  readonly terms: readonly Term[];
  readonly claims: readonly Claim[];
}

/** Terms that the change names, with what is broader, and the exceptions of claims that it puts. */
async function readBeside(store: Store, change: Change, at: RevisionNumber): Promise<Beside> {
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
