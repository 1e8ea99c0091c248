import type { AroundRow, ExtraLink, TermRow } from "#web/graph/around-row.ts";
import { claimSpans } from "../shared/years/claim-spans.ts";
import type { AroundLinkFragment, AroundMemberFragment } from "./AroundPage.graphql.ts";
import type { AroundEntry, AroundRead, ShownTerm } from "./around-groups.ts";

const lookOf = ({ claimCount, hardness }: AroundLinkFragment): TermRow["look"] => {
  if (claimCount === 0) return "bare";
  return hardness === "PHYSICAL" ? "hard" : "soft";
};

const drawn = (dated: AroundMemberFragment["dated"]): TermRow["claims"] =>
  dated.flatMap(({ id, relation, hardness, years }) => {
    const spans = claimSpans(relation, years);
    return spans ? [{ id, spans, isSoft: hardness === "PRACTICE" }] : [];
  });

const kindOf = ({ kind }: ShownTerm) => kind.toLowerCase() as TermRow["kind"];

/** The rows of the drawing: the term, then what the list has, in its order. */
export function aroundRows({ members }: AroundRead, entries: readonly AroundEntry[]): readonly AroundRow[] {
  const [centre] = members;
  if (!centre?.term) return [];
  const { id, label } = centre.term;
  return [
    {
      ...{ type: "term", id, label, step: 0, kind: kindOf(centre.term), words: "", look: "bare" },
      claims: drawn(centre.dated),
    },
    ...entries.map((entry): AroundRow => {
      const { step, words } = entry;
      if (entry.type === "more")
        return { type: "more", id: entry.id, step, words: `${entry.count} more ${words}` };
      const { term, number, link, dated } = entry;
      return {
        ...{ type: "term", id: term.id, number, step, kind: kindOf(term), label: term.label, words },
        ...{ look: lookOf(link), claims: drawn(dated) },
      };
    }),
  ];
}

/** Links beside those by which the neighbours are reached, to others than the term that each is reached from. */
export const extraLinks = (entries: readonly AroundEntry[]): readonly ExtraLink[] => {
  const also = entries.flatMap((entry) =>
    entry.type === "neighbour" ? entry.also.filter(({ other }) => other.id !== entry.from.id) : [],
  );
  return [...new Map(also.map(({ link: { id, from, to } }) => [id, { id, from, to }])).values()];
};
