import type { Claim } from "../../../domain/claim.ts";
import { compareText, firstDifference } from "../../../domain/compare.ts";
import type { TermId } from "../../../domain/ids.ts";
import { broaderTerms } from "../../../domain/region.ts";
import type { RevisionNumber } from "../../../domain/revision.ts";
import type { Term, TermKind } from "../../../domain/term.ts";
import type { Store } from "../../../ports/store.ts";
import { type Group, groupNeighbours, shareOut } from "./choose-neighbours.ts";
import { datedClaims, firstYear, nearerFirst } from "./dated-claims.ts";
import { FAR_LINKS, type Link, type LinkKind, linkId, SCOPE_LINKS } from "./link.ts";
import { linksOfClaims, linksOfTerm } from "./links-of.ts";
import { isAccepted, readLinks } from "./read-links.ts";

/** Pages of claims read of the term itself, and of each of its neighbours. */
const PAGES = { centre: 5, neighbour: 1 };
/** Terms shown at one step, and at both. */
export const MOST_NEAR = 60;
export const MOST_SHOWN = 90;
/** Of one group at the second step. */
const EACH_FURTHER = 3;
/** Nearly everything is joined to these: nothing is looked for beyond them. */
const HUBS: readonly TermKind[] = ["region", "part"];

/** How a term is reached: by which kind of link, and from which term. */
export interface Reach {
  readonly from: TermId;
  readonly kind: LinkKind;
  /** The link goes out from `from`. */
  readonly isOutgoing: boolean;
}
export interface Member {
  readonly term: TermId;
  /** 0 for the term itself. */
  readonly step: 0 | 1 | 2;
  readonly reach?: Reach;
  /** Claims with a date about it, the earliest first; around a region, those of the region before the others. */
  readonly dated: readonly Claim[];
}
/** Of one group, the terms that are not shown. */
export interface LeftOut extends Reach {
  readonly terms: readonly TermId[];
}
/** The neighbourhood of a term, as far as it is shown. */
export interface Around {
  /** The term, then its neighbours by group, each followed by its own; within a group by their first year. */
  readonly members: readonly Member[];
  /** Between members. Of those by scope only the ones by which a member is reached. */
  readonly links: readonly Link[];
  readonly leftOut: readonly LeftOut[];
  /** Claims and narrower terms that were not read, since there are so many. */
  readonly unread: number;
}

interface Reached {
  readonly term: TermId;
  readonly reach: Reach;
}

/**
 * Reads what stands around a term, one step away or two, at most `each` of one kind and side at the first. The
 * second step walks what dates and what is of a kind; regions and kinds of part end it.
 */
export async function readAround(
  { store }: { readonly store: Store },
  centre: Term,
  { steps, each }: { readonly steps: 1 | 2; readonly each: number },
  at?: RevisionNumber,
): Promise<Around> {
  const first = await readLinks(store, centre, PAGES.centre, at);
  const near = share(centre.id, groupNeighbours(centre.id, first.links, new Set()), each, MOST_NEAR);
  const known = new Set([centre.id, ...near.shown.map(({ term }) => term)]);
  const terms = await store.terms([...known], at);
  const walked = steps === 1 ? [] : near.shown.flatMap(({ term }) => terms.get(term) ?? []);
  const read = await Promise.all(
    walked
      .filter(({ kind }) => !HUBS.includes(kind))
      .map(async (term) => ({ term, ...(await readLinks(store, term, PAGES.neighbour, at)) })),
  );
  const leftOut = [...near.leftOut];
  const further: Reached[] = [];
  for (const { term, links } of read) {
    const inner = links.filter(({ kind }) => FAR_LINKS.includes(kind));
    const left = MOST_SHOWN - known.size;
    const found = share(term.id, groupNeighbours(term.id, inner, known), EACH_FURTHER, left);
    for (const { term: reached } of found.shown) known.add(reached);
    further.push(...found.shown);
    leftOut.push(...found.leftOut);
  }
  const { claims, terms: named } = await store.neighbourhood({
    ...{ seeds: [...known], regions: [], maxDepth: 0 },
    ...(at === undefined ? {} : { at }),
  });
  const accepted = claims.filter(isAccepted);
  const members = membersOf(centre, near.shown, further, accepted, broaderTerms(named));
  const subjects = new Map(
    accepted.flatMap((claim) => ("subject" in claim ? [[claim.id, claim.subject]] : [])),
  );
  return {
    members,
    links: between(members, [
      ...first.links,
      ...read.flatMap(({ links }) => links),
      ...linksOfClaims(accepted, (claim) => subjects.get(claim)),
      ...named.filter(({ id }) => known.has(id)).flatMap(linksOfTerm),
    ]),
    leftOut,
    unread: first.unread,
  };
}

/** Of the neighbours of a term, those that are shown, and those left out by group. */
function share(
  from: TermId,
  groups: readonly Group[],
  each: number,
  all: number,
): { readonly shown: readonly Reached[]; readonly leftOut: readonly LeftOut[] } {
  const shares = shareOut(
    groups.map(({ terms }) => terms.length),
    each,
    all,
  );
  const reachOf = ({ kind, isOutgoing }: Group): Reach => ({ from, kind, isOutgoing });
  return {
    shown: groups.flatMap((group, i) =>
      group.terms.slice(0, shares[i]).map((term) => ({ term, reach: reachOf(group) })),
    ),
    leftOut: groups
      .map((group, i) => ({ ...reachOf(group), terms: group.terms.slice(shares[i]) }))
      .filter(({ terms }) => terms.length > 0),
  };
}

function membersOf(
  centre: Term,
  near: readonly Reached[],
  further: readonly Reached[],
  claims: readonly Claim[],
  broader: ReadonlyMap<TermId, TermId>,
): readonly Member[] {
  const dated = datedClaims(claims);
  const datedOf = (term: TermId) => {
    const own = dated.get(term) ?? [];
    return centre.kind === "region" ? nearerFirst(own, centre.id, broader) : own;
  };
  const yearOf = (term: TermId) => Math.min(...datedOf(term).slice(0, 1).map(firstYear));
  const groupOf = ({ reach: { kind, isOutgoing } }: Reached) => `${kind} ${isOutgoing}`;
  const inOrder = (reached: readonly Reached[]): readonly Reached[] => {
    const groups = [...new Set(reached.map(groupOf))];
    return [...reached].sort((a, b) =>
      firstDifference(
        groups.indexOf(groupOf(a)) - groups.indexOf(groupOf(b)),
        Math.sign(yearOf(a.term) - yearOf(b.term)) || 0,
        compareText(a.term, b.term),
      ),
    );
  };
  return [
    { term: centre.id, step: 0, dated: datedOf(centre.id) },
    ...inOrder(near).flatMap(({ term, reach }): Member[] => [
      { term, step: 1, reach, dated: datedOf(term) },
      ...inOrder(further.filter((each) => each.reach.from === term)).map(
        (each): Member => ({ ...each, step: 2, dated: datedOf(each.term) }),
      ),
    ]),
  ];
}

/** The links of which both ends are members, each once with all its claims, in the order of the members they lead to. */
function between(members: readonly Member[], links: readonly Link[]): readonly Link[] {
  const place = new Map(members.map(({ term }, i) => [term, i]));
  const reaches = new Set(
    members.flatMap(({ term, reach }) =>
      reach === undefined
        ? []
        : linkId(
            reach.isOutgoing
              ? { from: reach.from, kind: reach.kind, to: term }
              : { from: term, kind: reach.kind, to: reach.from },
          ),
    ),
  );
  const found = new Map<string, Link>();
  for (const link of links) {
    const id = linkId(link);
    if (!place.has(link.from) || !place.has(link.to)) continue;
    if (SCOPE_LINKS.includes(link.kind) && !reaches.has(id)) continue;
    if ((found.get(id)?.claims.length ?? -1) < link.claims.length) found.set(id, link);
  }
  const later = ({ from, to }: Link) => Math.max(place.get(from) ?? 0, place.get(to) ?? 0);
  return [...found.values()].sort((a, b) =>
    firstDifference(
      later(a) - later(b),
      Number(reaches.has(linkId(b))) - Number(reaches.has(linkId(a))),
      compareText(linkId(a), linkId(b)),
    ),
  );
}
