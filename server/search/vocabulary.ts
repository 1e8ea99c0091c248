import { compareText } from "../domain/compare.ts";
import { editsApart } from "./edits-apart.ts";

/** A word of the index, with where it stands. */
export interface Word {
  readonly text: string;
  /** Places of terms that hold it, each with what it weighs there (`packPlace`); places given up are among them. */
  places: number[];
  /** Terms that hold it now. */
  held: number;
  /** The number of the last search that it was meant by. */
  meantBy: number;
}

/** All words that were ever indexed; one that no term holds any more counts for nothing. */
export interface Vocabulary {
  /** The word of a text, made where it is missing. */
  take(text: string): Word;
  /** The word of a text, if a term holds it. */
  find(text: string): Word | undefined;
  /** Longer words that begin so. */
  beginning(text: string): readonly Word[];
  /** Words that are this one but for at most `errors` letters wrong, missing or too many, with how many. */
  resembling(text: string, errors: number): readonly (readonly [Word, number])[];
  all(): Iterable<Word>;
  /** Lets go of the words that no term holds. */
  tidy(): void;
}

/** Words that begin with one letter, by the codes of their letters as soon as somebody looks. */
interface Drawer {
  words: Word[];
  isSorted: boolean;
}

export function vocabulary(): Vocabulary {
  const words = new Map<string, Word>();
  const drawers = new Map<string, Drawer>();

  const putAway = (word: Word): void => {
    const drawer = drawers.get(word.text.charAt(0));
    if (drawer === undefined) drawers.set(word.text.charAt(0), { words: [word], isSorted: true });
    else {
      drawer.words.push(word);
      drawer.isSorted = false;
    }
  };
  const inOrder = (letter: string): readonly Word[] => {
    const drawer = drawers.get(letter);
    if (drawer !== undefined && !drawer.isSorted) {
      drawer.words.sort((a, b) => compareText(a.text, b.text));
      drawer.isSorted = true;
    }
    return drawer?.words ?? [];
  };

  return {
    take: (text) => {
      const known = words.get(text);
      if (known !== undefined) return known;
      const word: Word = { text, places: [], held: 0, meantBy: 0 };
      words.set(text, word);
      putAway(word);
      return word;
    },
    find: (text) => {
      const word = words.get(text);
      return word !== undefined && word.held > 0 ? word : undefined;
    },
    beginning: (text) => {
      const all = inOrder(text.charAt(0));
      const found: Word[] = [];
      for (let at = firstFrom(all, text); at < all.length; at++) {
        const word = all[at] as Word;
        if (!word.text.startsWith(text)) break;
        if (word.text !== text && word.held > 0) found.push(word);
      }
      return found;
    },
    resembling: (text, errors) => {
      const letters = lettersOf(text);
      const found: (readonly [Word, number])[] = [];
      for (const word of errors === 0 ? [] : words.values()) {
        if (word.held === 0 || Math.abs(word.text.length - text.length) > errors) continue;
        if (bits(lettersOf(word.text) ^ letters) > 2 * errors) continue;
        const apart = editsApart(word.text, text, errors);
        if (apart !== undefined && apart > 0) found.push([word, apart]);
      }
      return found.sort(([a], [b]) => compareText(a.text, b.text));
    },
    all: () => words.values(),
    tidy: () => {
      drawers.clear();
      for (const word of [...words.values()])
        if (word.held === 0) words.delete(word.text);
        else putAway(word);
    },
  };
}

/** The place of the first word that is not before a text. */
function firstFrom(words: readonly Word[], text: string): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] as Word).text < text) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Which letters a word has, one bit for several: words one error apart differ in two of them at most. */
function lettersOf(text: string): number {
  let letters = 0;
  for (let at = 0; at < text.length; at++) letters |= 1 << (text.charCodeAt(at) & 31);
  return letters;
}

function bits(number: number): number {
  let left = number;
  let count = 0;
  for (; left !== 0; left &= left - 1) count++;
  return count;
}
