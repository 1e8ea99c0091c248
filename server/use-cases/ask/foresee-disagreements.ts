import type { Change } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import type { Store } from "../../ports/store.ts";
import { regionsOf } from "../../reasoning/disagreements/evidence.ts";
import { byYearsApart, findAboutSubjects, findOneSource } from "../../reasoning/disagreements/find-all.ts";
import type { Disagreement } from "../../reasoning/disagreements/rule.ts";
import { sayDisagreement } from "./say-disagreement.ts";

/** A disagreement as a sentence. */
export interface ForeseenDisagreement {
  readonly id: string;
  readonly says: string;
}

export interface ForeseenDisagreements {
  readonly created: readonly ForeseenDisagreement[];
  readonly settled: readonly ForeseenDisagreement[];
  /** False where the change moves a term below another: only the claims it edits were held against the others then. */
  readonly isWhole: boolean;
}

/** Which disagreements a change of a revision would bring up, and which it would settle: those among the claims it touches. */
export async function foreseeDisagreements(
  store: Store,
  change: Change,
  at: RevisionNumber,
): Promise<ForeseenDisagreements> {
  const edited = change.flatMap((edit) =>
    edit.kind === "claim" ? [edit.before, edit.after].filter((claim) => claim !== undefined) : [],
  );
  const subjects = [...new Set(edited.flatMap((claim) => ("subject" in claim ? [claim.subject] : [])))];
  const regions = [...new Set(edited.flatMap((claim) => [...regionsOf(claim)]))];
  const named = [...new Set([...edited.flatMap(namedTerms), ...regions])];
  const about = await store.neighbourhood({ seeds: subjects, regions: [], maxDepth: 0, at });
  const beside = await store.neighbourhood({ seeds: named, regions: [], maxDepth: 0, at });
  const terms: ReadonlyMap<string, Term> = new Map(
    [...about.terms, ...beside.terms].map((term) => [term.id, term]),
  );
  const ofRegion = new Map<TermId, readonly Claim[]>();
  for (const region of regions) {
    const own: Claim[] = [];
    for await (const slice of store.allClaims({ naming: region }, at)) own.push(...slice);
    ofRegion.set(region, own);
  }
  const find = (known: ReadonlyMap<string, Term>, lay: (claims: readonly Claim[]) => readonly Claim[]) => [
    ...findAboutSubjects([...known.values()], lay(about.claims)).filter(({ term }) =>
      subjects.includes(term),
    ),
    ...regions.flatMap((region) => {
      const own = lay(ofRegion.get(region) ?? []).filter((claim) => regionsOf(claim).has(region));
      return findOneSource(region, own) ?? [];
    }),
  ];
  const termsAfter = after(terms, change, "term");
  const before = find(terms, (claims) => claims.filter(isAccepted));
  const then = find(termsAfter, (claims) => {
    const standing = new Map<string, Claim>(claims.map((claim) => [claim.id, claim]));
    return [...after(standing, change, "claim").values()].filter(isAccepted);
  });
  const [was, is] = [idsOf(before), idsOf(then)];
  const say = (known: ReadonlyMap<string, Term>, found: readonly Disagreement[]) =>
    Promise.all(
      [...found].sort(byYearsApart).map(async (one) => ({
        id: one.id,
        says: await sayDisagreement(async (ids) => ids.flatMap((id) => known.get(id) ?? []), one),
      })),
    );
  return {
    created: await say(
      termsAfter,
      then.filter(({ id }) => !was.has(id)),
    ),
    settled: await say(
      terms,
      before.filter(({ id }) => !is.has(id)),
    ),
    isWhole: !change.some(
      (edit) => edit.kind === "term" && edit.before?.broader !== edit.after?.broader && edit.before,
    ),
  };
}

const isAccepted = ({ status }: Claim): boolean => status === "accepted";
const idsOf = (found: readonly Disagreement[]): ReadonlySet<string> => new Set(found.map(({ id }) => id));

/** Things of one kind with the edits of a change laid over them. */
function after<Thing extends Term | Claim>(
  things: ReadonlyMap<string, Thing>,
  change: Change,
  kind: Thing extends Term ? "term" : "claim",
): ReadonlyMap<string, Thing> {
  const laid = new Map(things);
  for (const edit of change) {
    if (edit.kind !== kind) continue;
    if (edit.before) laid.delete(edit.before.id);
    if (edit.after) laid.set(edit.after.id, edit.after as Thing);
  }
  return laid;
}
