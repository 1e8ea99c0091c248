import type { Change } from "../../domain/change.ts";
import type { Claim, Dated, SpreadTo } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { openTurns } from "../../ports/open-turns.ts";
import type { Store } from "../../ports/store.ts";
import { isDated, regionsOf } from "../../reasoning/disagreements/evidence.ts";
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
}

/** Subjects whose claims are held against each other at once. */
const SUBJECTS_AT_ONCE = 20;

interface Found {
  readonly disagreement: Disagreement;
  /** Terms as they stand on its side. */
  readonly terms: ReadonlyMap<string, Term>;
}

/**
 * Which disagreements a change of a revision would bring up, and which it would settle: those about the subjects and regions of the
 * claims it edits, and about all that is said of a term that it moves below another, or of one below that. Stopped, it gives what
 * was found until then.
 */
export async function foreseeDisagreements(
  store: Store,
  change: Change,
  at: RevisionNumber,
  stop?: AbortSignal,
): Promise<ForeseenDisagreements> {
  const turn = openTurns();
  const edited = change.flatMap((edit) =>
    edit.kind === "claim" ? [edit.before, edit.after].filter((claim) => claim !== undefined) : [],
  );
  const beside = await readBesideClaims(store, change, edited, at);
  const [was, is] = [new Map<string, Found>(), new Map<string, Found>()];
  const lookAt = (claims: readonly Claim[], known: readonly Term[], find: Find): void => {
    const terms = new Map<string, Term>([...beside, ...known].map((term) => [term.id, term]));
    const standing = new Map<string, Claim>(claims.map((claim) => [claim.id, claim]));
    for (const [found, sideTerms, sideClaims] of [
      [was, terms, standing],
      [is, after(terms, change, "term"), after(standing, change, "claim")],
    ] as const)
      for (const disagreement of find([...sideTerms.values()], [...sideClaims.values()].filter(isAccepted)))
        found.set(disagreement.id, { disagreement, terms: sideTerms });
  };

  const subjects = await subjectsTouched(store, change, edited, at, turn);
  for (let from = 0; from < subjects.length && !stop?.aborted; from += SUBJECTS_AT_ONCE) {
    const seeds = subjects.slice(from, from + SUBJECTS_AT_ONCE);
    const { claims, terms } = await store.neighbourhood({ seeds, regions: [], maxDepth: 0, at });
    lookAt(claims, terms, (known, laid) =>
      findAboutSubjects(known, laid).filter(({ term }) => seeds.includes(term)),
    );
    await turn();
  }
  for (const region of new Set(edited.flatMap((claim) => [...regionsOf(claim)]))) {
    if (stop?.aborted) break;
    const own: Claim[] = [];
    for await (const slice of store.allClaims({ naming: region }, at)) own.push(...slice);
    lookAt(own, [], (_, laid) => {
      const found = findOneSource(
        region,
        laid.filter((claim) => regionsOf(claim).has(region)),
      );
      return found ? [found] : [];
    });
    await turn();
  }
  return { created: await say(only(is, was)), settled: await say(only(was, is)) };
}

type Find = (terms: readonly Term[], claims: readonly Claim[]) => readonly Disagreement[];

/** Terms that edited claims name and that moved terms come below, with all above them. */
async function readBesideClaims(
  store: Store,
  change: Change,
  edited: readonly Claim[],
  at: RevisionNumber,
): Promise<readonly Term[]> {
  const above = change.flatMap((edit) => (edit.kind === "term" ? (edit.after?.broader ?? []) : []));
  const seeds = [
    ...new Set([
      ...edited.flatMap(namedTerms),
      ...edited.flatMap((claim) => [...regionsOf(claim)]),
      ...above,
    ]),
  ];
  return (await store.neighbourhood({ seeds, regions: [], maxDepth: 0, at })).terms;
}

/** Subjects of edited claims, and of claims that hold in what is moved below another term. */
async function subjectsTouched(
  store: Store,
  change: Change,
  edited: readonly Claim[],
  at: RevisionNumber,
  turn: () => Promise<void>,
): Promise<readonly TermId[]> {
  const subjects = new Set(edited.flatMap((claim) => ("subject" in claim ? [claim.subject] : [])));
  const moved = new Set<TermId>(
    change.flatMap((edit) =>
      edit.kind === "term" && edit.before && edit.after && edit.before.broader !== edit.after.broader
        ? [edit.before.id]
        : [],
    ),
  );
  // A set iterated over while it grows: what is below comes along.
  for (const term of moved) {
    for await (const below of store.allTerms({ broader: term }, at))
      for (const { id } of below) moved.add(id);
    for await (const claims of store.allClaims({ naming: term }, at)) {
      for (const claim of claims) if (holdsIn(claim, term)) subjects.add(claim.subject);
      await turn();
    }
  }
  return [...subjects];
}

/** Whether a claim that can disagree with others is scoped to a term, or spread from or to it. */
const holdsIn = (claim: Claim, term: TermId): claim is Dated | SpreadTo =>
  claim.relation === "spread to"
    ? regionsOf(claim).has(term)
    : isDated(claim) && [claim.scope.region, claim.scope.form, claim.scope.part].includes(term);

const only = (found: ReadonlyMap<string, Found>, but: ReadonlyMap<string, Found>): readonly Found[] =>
  [...found].flatMap(([id, one]) => (but.has(id) ? [] : [one]));

const say = (found: readonly Found[]): Promise<readonly ForeseenDisagreement[]> =>
  Promise.all(
    [...found]
      .sort((a, b) => byYearsApart(a.disagreement, b.disagreement))
      .map(async ({ disagreement, terms }) => ({
        id: disagreement.id,
        says: await sayDisagreement(async (ids) => ids.flatMap((id) => terms.get(id) ?? []), disagreement),
      })),
  );

const isAccepted = ({ status }: Claim): boolean => status === "accepted";

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
