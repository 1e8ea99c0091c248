import type { SearchHit } from "../ports/store.ts";
import { bestOf } from "./best-of.ts";
import type { Word } from "./vocabulary.ts";
import { type Entry, placeOf, type WordIndex, weightOf } from "./word-index.ts";

/** Scores are compared and printed to this many parts of one. */
const round = (score: number): number => Math.round(score * 1000) / 1000;
/** What counts for a word that begins as asked, and for one that resembles it. */
const BEGINNING = 0.6;
const RESEMBLING = 0.3;

/** Letters that may be wrong, missing or too many in a word. */
const errorsForgiven = (word: string): number => (word.length < 4 ? 0 : word.length < 8 ? 1 : 2);

/** The number of a search marks the words that it means. */
let searches = 0;

/**
 * The terms of an index for these words, best first, ties by id. Beginnings of words are enough, and a word that no term
 * holds stands for those it resembles. Wanted terms that hold all words stand alone where there are any. A rare word counts for
 * more than one that many terms hold (BM25). The same terms give the same scores, whatever became of them before.
 */
export function rankTerms(
  index: WordIndex,
  asked: readonly string[],
  isWanted: (entry: Entry) => boolean,
  first: number,
): readonly SearchHit[] {
  const { entries } = index;
  const scores = new Float64Array(entries.length);
  const held = new Uint16Array(entries.length);
  const counted = new Uint16Array(entries.length);
  const search = ++searches;
  const known = asked.map(index.words.find);
  const areAllKnown = known.every((word) => word !== undefined);
  for (const [n, text] of asked.entries())
    for (const [word, share] of meaningsOf(index, text)) {
      if (!areAllKnown || word === known[n]) word.meantBy = search;
      const rarity = Math.log(1 + (index.size() - word.held + 0.5) / (word.held + 0.5));
      for (const packed of word.places) {
        const place = placeOf(packed);
        scores[place] = (scores[place] as number) + share * rarity * weightOf(packed);
        if (counted[place] === n + 1) continue;
        counted[place] = n + 1;
        held[place] = (held[place] as number) + 1;
      }
    }
  const holding = (least: number): readonly number[] => {
    const found: number[] = [];
    for (let place = 0; place < entries.length; place++) {
      if ((held[place] as number) < least) continue;
      const entry = entries[place];
      if (entry !== undefined && isWanted(entry)) found.push(place);
    }
    return found;
  };
  const holdAll = holding(asked.length);
  const found = holdAll.length > 0 ? holdAll : holding(1);
  let best = 0;
  for (const place of found) best = Math.max(best, scores[place] as number);
  for (const place of found)
    scores[place] = round(
      (scores[place] as number) + best * likeness(entries[place] as Entry, asked, search),
    );
  const idAt = (place: number): string => entries[place]?.id ?? "";
  const order = (a: number, b: number): number =>
    (scores[b] as number) - (scores[a] as number) || (idAt(a) < idAt(b) ? -1 : 1);
  return bestOf(found, order, first).map((place) => ({
    term: (entries[place] as Entry).id,
    score: scores[place] as number,
  }));
}

/** The words that one asked for can stand for, and how much each counts. */
function meaningsOf({ words }: WordIndex, text: string): readonly (readonly [Word, number])[] {
  const exact = words.find(text);
  const begun = words
    .beginning(text)
    .map(
      (word) =>
        [word, (BEGINNING * word.text.length) / (0.7 * word.text.length + 0.3 * text.length)] as const,
    );
  if (exact !== undefined) return [[exact, 1], ...begun];
  const alike = words
    .resembling(text, errorsForgiven(text))
    .filter(([word]) => !word.text.startsWith(text))
    .map(([word, apart]) => [word, (RESEMBLING * word.text.length) / (word.text.length + apart)] as const);
  return [...begun, ...alike];
}

/**
 * How much a term is what was asked for; it counts before any score. Its label is the words asked, or the words they
 * are meant for; else one of its other labels is.
 */
function likeness({ label, others }: Entry, asked: readonly string[], search: number): number {
  const isNamed = (words: readonly Word[]): boolean =>
    words.length === asked.length && words.every(({ text }, i) => text === asked[i]);
  const isMeant = (words: readonly Word[]): boolean => words.every(({ meantBy }) => meantBy === search);
  if (isNamed(label)) return 4;
  if (isMeant(label)) return 3;
  if (others.some(isNamed)) return 2;
  return others.some(isMeant) ? 1 : 0;
}
