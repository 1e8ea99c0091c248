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
 * Indexes terms by the words of label, other labels and note. Beginnings of words are enough, and a word that no term
 * holds stands for those it resembles. Wanted terms that hold all words stand alone where there are any. Equal terms give
 * equal scores whatever their order.
 */
export function indexTerms(terms: Iterable<Term>): TermSearch {
  const byId = new Map([...terms].sort((a, b) => (a.id < b.id ? -1 : 1)).map((term) => [term.id, term]));
  const known = new Set<string>();
  const index = new MiniSearch<Term>({
    fields: ["label", "otherLabels", "note"],
    extractField: (term, field) =>
      field === "otherLabels" ? (term.otherLabels ?? []).join(" ") : term[field as "id" | "label" | "note"],
    tokenize: words,
    processTerm: (word) => word,
    searchOptions: {
      boost: { label: 8, otherLabels: 6, note: 1 },
      prefix: true,
      fuzzy: (word) => !known.has(word) && errorsForgiven(word),
      weights: { fuzzy: 0.3, prefix: 0.6 },
    },
  });
  index.addAll([...byId.values()]);
  for (const { label, otherLabels = [], note = "" } of byId.values())
    for (const word of words([label, ...otherLabels, note].join(" "))) known.add(word);

  return (asked, isWanted, first) => {
    if (!(Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE))
      throw new RangeError(`A search gives 1 to ${LARGEST_PAGE} hits, not ${first}`);
    const filter = ({ id }: { id: TermId }): boolean => isWanted(byId.get(id) as Term);
    const all = index.search(asked, { combineWith: "AND", filter });
    const found = all.length > 0 ? all : index.search(asked, { combineWith: "OR", filter });
    const best = found[0]?.score ?? 0;
    const askedWords = words(asked);
    const certain = askedWords.filter((word) => known.has(word));
    return found
      .map(({ id, score, terms: matched }) => ({ term: byId.get(id as TermId) as Term, score, matched }))
      .map(({ term, score, matched }) => {
        const meant = new Set(certain.length === askedWords.length ? certain : [...certain, ...matched]);
        return { term: term.id, score: round(score + best * likeness(term, askedWords, meant)) };
      })
      .sort((a, b) => b.score - a.score || (a.term < b.term ? -1 : 1))
      .slice(0, first);
  };
}

/** Letters that may be wrong, missing or too many in a word. */
const errorsForgiven = (word: string): number => (word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/**
 * How much a term is what was asked for; it counts before any score. Its label is the words asked, or the words they
 * are meant for; else one of its other labels is.
 */
function likeness(term: Term, asked: readonly string[], meant: ReadonlySet<string>): number {
  const isNamed = (label: string): boolean => words(label).join(" ") === asked.join(" ");
  const isMeant = (label: string): boolean => words(label).every((word) => meant.has(word));
  const others = term.otherLabels ?? [];
  if (isNamed(term.label)) return 4;
  if (isMeant(term.label)) return 3;
  if (others.some(isNamed)) return 2;
  return others.some(isMeant) ? 1 : 0;
}
