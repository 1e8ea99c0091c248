const WORDS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** A count in a sentence: in words up to ten, in figures above. */
export const numberInWords = (count: number): string => WORDS[count] ?? `${count}`;
