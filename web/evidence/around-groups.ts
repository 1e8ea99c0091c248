import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { sayLink } from "../shared/words/link-words.ts";
import { relationWords } from "../shared/words/relation-words.ts";
import { sayYearsBriefly } from "../shared/years/say-claim-years.ts";
import type {
  AroundLeftOutFragment,
  AroundLinkFragment,
  AroundMemberFragment,
} from "./AroundPage.graphql.ts";

/** What the page reads. */
export interface AroundRead {
  readonly members: readonly AroundMemberFragment[];
  readonly links: readonly AroundLinkFragment[];
  readonly leftOut: readonly AroundLeftOutFragment[];
}
export type ShownTerm = NonNullable<AroundMemberFragment["term"]>;

/** A neighbour as it is listed and drawn. */
export interface Neighbour {
  readonly type: "neighbour";
  readonly id: string;
  readonly number: number;
  readonly step: 1 | 2;
  readonly term: ShownTerm;
  /** The term that it is reached from. */
  readonly from: ShownTerm;
  readonly words: string;
  readonly link: AroundLinkFragment;
  /** Other links to terms that are shown, in words, with the term at the other end. */
  readonly also: readonly {
    readonly link: AroundLinkFragment;
    readonly words: string;
    readonly other: ShownTerm;
  }[];
  readonly dated: AroundMemberFragment["dated"];
  readonly datedCount: number;
}
/** Of one group, what is left out. */
export interface More {
  readonly type: "more";
  readonly id: string;
  readonly step: 1 | 2;
  readonly words: string;
  readonly count: number;
  readonly terms: AroundLeftOutFragment["terms"];
}
export type AroundEntry = Neighbour | More;

/** Neighbours in the order they are read, after the last of each group what is left out of it. */
export function aroundEntries({ members, links, leftOut }: AroundRead): readonly AroundEntry[] {
  const shown = new Map(members.flatMap(({ term }) => (term ? [[term.id, term] as const] : [])));
  const linkOf = new Map(links.map((link) => [link.id, link]));
  const reached = new Set(members.map(({ reachedBy }) => reachedBy));
  const entries: AroundEntry[] = [];
  let number = 0;

  const wordsFor = (link: AroundLinkFragment, from: string) =>
    sayLink(link.kind, link.from === from, kindOf(link.to));
  const kindOf = (id: string): TermKind => shown.get(id)?.kind ?? "FEATURE";
  const addMore = (from: string, step: 1 | 2, of: readonly AroundLeftOutFragment[]) => {
    for (const { kind, isOutgoing, count, terms } of of) {
      const words = sayLink(kind, isOutgoing, isOutgoing ? (terms[0]?.kind ?? "FEATURE") : kindOf(from));
      entries.push({ type: "more", id: `more ${from} ${kind} ${isOutgoing}`, step, words, count, terms });
    }
  };
  const add = (from: ShownTerm, step: 1 | 2) => {
    const own = members.flatMap((member) => {
      const link = linkOf.get(member.reachedBy ?? "");
      return member.reachedFrom === from.id && member.term && link
        ? [{ ...member, term: member.term, link }]
        : [];
    });
    const left = leftOut.filter((group) => group.from === from.id);
    const isOf = (link: AroundLinkFragment) => (group: AroundLeftOutFragment) =>
      group.kind === link.kind && group.isOutgoing === (link.from === from.id);
    own.forEach(({ term, link, dated, datedCount }, i) => {
      number += 1;
      const also = links
        .filter((each) => !reached.has(each.id) && (each.from === term.id || each.to === term.id))
        .flatMap((each) => {
          const other = shown.get(each.from === term.id ? each.to : each.from);
          return other ? [{ link: each, words: wordsFor(each, term.id), other }] : [];
        });
      const words = wordsFor(link, from.id);
      entries.push({
        type: "neighbour",
        id: term.id,
        number,
        step,
        term,
        from,
        words,
        link,
        also,
        dated,
        datedCount,
      });
      if (step === 1) add(term, 2);
      const next = own[i + 1]?.link;
      const group = left.find(isOf(link));
      if (group && !(next && isOf(next)(group))) addMore(from.id, step, [group]);
    });
    addMore(
      from.id,
      step,
      left.filter((group) => !own.some(({ link }) => isOf(link)(group))),
    );
  };
  const centre = members[0]?.term;
  if (centre) add(centre, 1);
  return entries;
}

/** Dated claims in few words: "introduced 1777, Britain; common from 1820–1840, New England; 2 more". */
export function sayDated(dated: AroundMemberFragment["dated"], count: number): string | undefined {
  if (dated.length === 0) return undefined;
  const said = dated.map(({ relation, years, region }) =>
    [
      `${relation === "NOT_FOUND_IN" ? "not found" : relationWords[relation]} ${sayYearsBriefly(relation, years)}`,
      ...(region ? [region.label] : []),
    ].join(", "),
  );
  return [...said, ...(count > dated.length ? [`${count - dated.length} more`] : [])].join("; ");
}

/** How many stand one step away, and how: "11 terms stand one step away. Needed for: 8; a kind of it: 3." */
export function sayGroups(entries: readonly AroundEntry[]): string {
  const counts = new Map<string, number>();
  for (const entry of entries.filter(({ step }) => step === 1))
    counts.set(entry.words, (counts.get(entry.words) ?? 0) + (entry.type === "more" ? entry.count : 1));
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
  if (all === 0)
    return "Nothing stands beside it yet: no claim names it, and no term is broader or narrower.";
  const said = [...counts].map(([words, count]) => `${words}: ${count}`).join("; ");
  return `${all === 1 ? "One term stands" : `${all} terms stand`} one step away. ${said[0]?.toUpperCase()}${said.slice(1)}.`;
}
