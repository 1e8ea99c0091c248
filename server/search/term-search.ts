import MiniSearch from "minisearch";
import type { TermId } from "../domain/ids.ts";
import type { Term } from "../domain/term.ts";
import { LARGEST_PAGE, type SearchHit } from "../ports/store.ts";

/** Finds terms by words. Call it with a test that tells which terms are wanted, and how many hits at most. */
export type TermSearch = (
  words: string,
  isWanted: (term: Term) => boolean,
  first: number,
) => readonly SearchHit[];

/** Lower case without accents, so that "Écritoire" is found by "ecritoire". */
const fold = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
const words = (text: string): string[] => fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
/** Scores are compared and printed to this many parts of one. */
const round = (score: number): number => Math.round(score * 1000) / 1000;

/**
 * Indexes terms by the words of label, other labels and note; prefixes and small typing errors are forgiven.
 * A term named exactly as asked comes first, then one whose other label is; hits that hold all words stand alone
 * where there are any. Equal terms give equal scores whatever their order.
 */
export function indexTerms(terms: Iterable<Term>): TermSearch {
  const byId = new Map([...terms].sort((a, b) => (a.id < b.id ? -1 : 1)).map((term) => [term.id, term]));
  const index = new MiniSearch<Term>({
    fields: ["label", "otherLabels", "note"],
    extractField: (term, field) =>
      field === "otherLabels" ? (term.otherLabels ?? []).join(" ") : term[field as "id" | "label" | "note"],
    tokenize: words,
    processTerm: (word) => word,
    searchOptions: {
      boost: { label: 8, otherLabels: 6, note: 1 },
      prefix: (word) => word.length > 1,
      fuzzy: (word) => (word.length < 4 ? false : word.length < 8 ? 1 : 2),
      weights: { fuzzy: 0.3, prefix: 0.6 },
    },
  });
  index.addAll([...byId.values()]);

  return (asked, isWanted, first) => {
    if (!(Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE))
      throw new RangeError(`A search gives 1 to ${LARGEST_PAGE} hits, not ${first}`);
    const name = words(asked).join(" ");
    const all = index.search(asked, { combineWith: "AND" });
    const found = all.length > 0 ? all : index.search(asked, { combineWith: "OR" });
    const best = found[0]?.score ?? 0;
    return found
      .map(({ id, score }) => ({ term: byId.get(id as TermId) as Term, score }))
      .filter(({ term }) => isWanted(term))
      .map(({ term, score }) => ({ term: term.id, score: round(score + best * 2 * likeness(term, name)) }))
      .sort((a, b) => b.score - a.score || (a.term < b.term ? -1 : 1))
      .slice(0, first);
  };
}

/** 1 for a term labelled exactly so, half for one also called so, else 0. */
function likeness(term: Term, name: string): number {
  const isNamed = (label: string): boolean => words(label).join(" ") === name;
  return isNamed(term.label) ? 1 : (term.otherLabels ?? []).some(isNamed) ? 0.5 : 0;
}
