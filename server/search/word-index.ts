import type { TermId } from "../domain/ids.ts";
import type { Term } from "../domain/term.ts";
import { type Vocabulary, vocabulary, type Word } from "./vocabulary.ts";
import { fold, wordsOf } from "./words.ts";

/** What is kept of a term to find and to judge it. */
export interface Entry extends Pick<Term, "id" | "kind" | "broader" | "parts"> {
  /** To sort by. */
  readonly folded: string;
  readonly label: readonly Word[];
  readonly others: readonly (readonly Word[])[];
}

/** The words of terms, and where each stands. A term has a place, a number; one that is changed gets another. */
export interface WordIndex {
  readonly words: Vocabulary;
  /** By place; places given up are empty. */
  readonly entries: readonly (Entry | undefined)[];
  size(): number;
  put(term: Term): void;
  /** Takes out a term that was put in. */
  drop(term: Term): void;
}

/** What a word weighs, by where it stands: labels before other labels before notes. */
const FIELDS = [
  { weight: 8, usualLength: 3, of: ({ label }: Term) => label },
  { weight: 6, usualLength: 3, of: ({ otherLabels = [] }: Term) => otherLabels.join(" ") },
  { weight: 1, usualLength: 20, of: ({ note = "" }: Term) => note },
] as const;
/** How soon a word that stands often weighs no more, and how much a long field takes from each word (Robertson and Zaragoza 2009, BM25). */
const SATURATION = 1.2;
const LENGTH_COUNTS = 0.7;
/** Weights are kept in steps, up to what a word in all fields can weigh: with the place in one number of 32 bits. */
const STEP_BITS = 10;
const STEPS = 2 ** STEP_BITS;
const STEP = (15 * (SATURATION + 1)) / (STEPS - 1);
/** Places given up before all are numbered anew, beside as many as there are terms. */
const MOST_GIVEN_UP = 10_000;

const packPlace = (place: number, weight: number): number => place * STEPS + Math.round(weight / STEP);
export const placeOf = (packed: number): number => packed >>> STEP_BITS;
export const weightOf = (packed: number): number => (packed & (STEPS - 1)) * STEP;

export function wordIndex(): WordIndex {
  const words = vocabulary();
  let entries: (Entry | undefined)[] = [];
  const places = new Map<TermId, number>();

  /** Numbers the places anew, without those given up. */
  const tidy = (): void => {
    const moved = new Map<number, number>();
    const left: Entry[] = [];
    for (const [place, entry] of entries.entries()) if (entry) moved.set(place, left.push(entry) - 1);
    for (const word of words.all())
      word.places = word.places.flatMap((packed) => {
        const place = moved.get(placeOf(packed));
        return place === undefined ? [] : [place * STEPS + (packed & (STEPS - 1))];
      });
    words.tidy();
    entries = left;
    for (const [place, { id }] of left.entries()) places.set(id, place);
  };

  return {
    words,
    get entries() {
      return entries;
    },
    size: () => places.size,
    put: (term) => {
      const place = entries.length;
      const take = (text: string): readonly Word[] => wordsOf(text).map(words.take);
      const { id, kind, broader, parts, label, otherLabels = [] } = term;
      entries.push({
        ...{ id, kind, folded: fold(label), label: take(label), others: otherLabels.map(take) },
        ...(broader === undefined ? {} : { broader }),
        ...(parts === undefined ? {} : { parts }),
      });
      places.set(id, place);
      for (const [text, weight] of weigh(term)) {
        const word = words.take(text);
        word.places.push(packPlace(place, weight));
        word.held++;
      }
    },
    drop: (term) => {
      const place = places.get(term.id);
      if (place === undefined) return;
      for (const text of weigh(term).keys()) words.take(text).held--;
      entries[place] = undefined;
      places.delete(term.id);
      if (entries.length > 2 * places.size + MOST_GIVEN_UP) tidy();
    },
  };
}

/** What each word of a term weighs for it. Lengths are held against usual ones, so that no other term has a say in it. */
function weigh(term: Term): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  for (const { weight, usualLength, of } of FIELDS) {
    const all = wordsOf(of(term));
    const length = 1 - LENGTH_COUNTS + (LENGTH_COUNTS * all.length) / usualLength;
    const counts = new Map<string, number>();
    for (const word of all) counts.set(word, (counts.get(word) ?? 0) + 1);
    for (const [word, count] of counts)
      weights.set(
        word,
        (weights.get(word) ?? 0) + (weight * count * (SATURATION + 1)) / (count + SATURATION * length),
      );
  }
  return weights;
}
