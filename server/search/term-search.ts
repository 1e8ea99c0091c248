import MiniSearch from "minisearch";
import type { Claim } from "../domain/claim.ts";
import { compareIds, compareText, firstDifference } from "../domain/compare.ts";
import type { TermId } from "../domain/ids.ts";
import type { Term } from "../domain/term.ts";
import { LARGEST_PAGE, type SearchFilter, type SearchHit } from "../ports/store.ts";
import { admitTerms } from "./admit-terms.ts";

/** Finds terms by words and filter, at most `first` of them. */
export type TermSearch = (words: string, filter: SearchFilter, first: number) => readonly SearchHit[];

/** Lower case without accents, so that "Écritoire" is found by "ecritoire". */
const fold = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
const words = (text: string): string[] => fold(text).match(/[\p{L}\p{N}]+/gu) ?? [];
/** Scores are compared and printed to this many parts of one. */
const round = (score: number): number => Math.round(score * 1000) / 1000;

/**
 * Indexes terms by the words of label, other labels and note. Beginnings of words are enough, and a word that no term
 * holds stands for those it resembles. Wanted terms that hold all words stand alone where there are any. Equal terms give
 * equal scores whatever their order. Claims of the same revision are read when a filter first needs them.
 */
export function indexTerms(terms: Iterable<Term>, readClaims: () => Iterable<Claim>): TermSearch {
  const byId = new Map([...terms].sort(compareIds).map((term) => [term.id, term]));
  const admit = admitTerms(byId, readClaims);
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

  /** All that are admitted, by label: where no words are asked for but the search is narrowed. */
  const browse = (filter: SearchFilter, first: number): readonly SearchHit[] =>
    [...byId.values()]
      .filter(admit(filter))
      .sort((a, b) => firstDifference(compareText(fold(a.label), fold(b.label)), compareIds(a, b)))
      .slice(0, first)
      .map(({ id }) => ({ term: id, score: 0 }));

  return (asked, filter, first) => {
    if (!(Number.isInteger(first) && first >= 1 && first <= LARGEST_PAGE))
      throw new RangeError(`A search gives 1 to ${LARGEST_PAGE} hits, not ${first}`);
    const askedWords = words(asked);
    if (askedWords.length === 0)
      return asked.trim() === "" && isNarrowed(filter) ? browse(filter, first) : [];
    const isAdmitted = admit(filter);
    const isWanted = ({ id }: { id: TermId }): boolean => isAdmitted(byId.get(id) as Term);
    const all = index.search(asked, { combineWith: "AND", filter: isWanted });
    const found = all.length > 0 ? all : index.search(asked, { combineWith: "OR", filter: isWanted });
    const best = found[0]?.score ?? 0;
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

const isNarrowed = ({ part, region, years }: SearchFilter): boolean =>
  part !== undefined || region !== undefined || years !== undefined;

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
