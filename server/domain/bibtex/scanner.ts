/** A place in a text that moves forward. */
export interface Scanner {
  at(): number;
  goTo(index: number): void;
  step(): void;
  isAtEnd(): boolean;
  is(sign: string): boolean;
  /** The sign here, as it is told to a person. */
  sign(): string;
  /** The next letters, at most so many. */
  rest(most: number): string;
  /** What a sticky pattern finds here, which may be nothing; stands behind it then. */
  take(pattern: RegExp): string;
  /** Over white space, and over lines that are set aside with `%`. */
  skipSpace(): void;
  skipCommas(): void;
  /** What stands between braces or quotation marks here; undefined and unmoved where they do not close. */
  takeDelimited(): string | undefined;
  /** Over a comment that is open here to its end; false and unmoved where it does not close soon. */
  skipComment(close: string): boolean;
  /** Line of this place, from 1. */
  line(): number;
  lineOf(index: number): number;
  /** Index of the first letter of the line. */
  lineStartOf(index: number): number;
}

/** Letters of a comment in braces; of a longer one only the word is skipped. */
const LONGEST_COMMENT = 20_000;
const ENTRY_LINE = /[ \t]*@[ \t]*[A-Za-z][\w-]*[ \t]*[{(]/y;

/** Stands at the beginning of a text. */
export function createScanner(text: string): Scanner {
  let at = 0;
  const ends = endsOfLines(text);
  const lineOf = (index: number): number => countBelow(ends, index) + 1;

  const take = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    const [found = ""] = pattern.exec(text) ?? [];
    at += found.length;
    return found;
  };

  /**
   * Index of the sign that closes what is open at `from`, with braces inside in pairs, whatever stands before them, as
   * BibTeX counts. A line that begins an entry is never inside, so that a brace left open costs one entry alone.
   */
  function findClose(from: number, close: string, end = text.length): number | undefined {
    let depth = 0;
    for (let index = from; index < end; index += 1) {
      const sign = text[index];
      if (depth === 0 && sign === close) return index;
      if (sign === "{") depth += 1;
      else if (sign === "}") depth -= 1;
      else if (sign === "\n" && isEntryLine(index + 1)) return undefined;
      if (depth < 0) return undefined;
    }
    return undefined;
  }

  const isEntryLine = (index: number): boolean => {
    ENTRY_LINE.lastIndex = index;
    return ENTRY_LINE.test(text);
  };

  return {
    at: () => at,
    goTo: (index) => {
      at = index;
    },
    step: () => {
      at += 1;
    },
    isAtEnd: () => at >= text.length,
    is: (sign) => text[at] === sign,
    sign: () => String.fromCodePoint(text.codePointAt(at) ?? 32),
    rest: (most) => text.slice(at, at + most),
    take,
    skipSpace: () => {
      take(/(?:\s+|%[^\n]*)*/y);
    },
    skipCommas: () => {
      take(/(?:[\s,]+|%[^\n]*)*/y);
    },
    takeDelimited: () => {
      const end = findClose(at + 1, text[at] === "{" ? "}" : '"');
      if (end === undefined) return undefined;
      const inside = text.slice(at + 1, end);
      at = end + 1;
      return inside;
    },
    skipComment: (close) => {
      const end = findClose(at, close, Math.min(text.length, at + LONGEST_COMMENT));
      if (end === undefined) return false;
      at = end + 1;
      return true;
    },
    line: () => lineOf(at),
    lineOf,
    lineStartOf: (index) => (ends[countBelow(ends, index) - 1] ?? -1) + 1,
  };
}

function endsOfLines(text: string): readonly number[] {
  const ends: number[] = [];
  for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) ends.push(end);
  return ends;
}

/** How many of the rising numbers are less, found by halving. */
function countBelow(numbers: readonly number[], than: number): number {
  let low = 0;
  let high = numbers.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((numbers[middle] as number) < than) low = middle + 1;
    else high = middle;
  }
  return low;
}
