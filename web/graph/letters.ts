/** Mean advance of a letter as a share of the type size; the type is narrow, so this is on the safe side. */
const ADVANCE = 0.5;

/** Sizes of type in a drawing, px. */
export const TYPE = { axis: 11, small: 11.5, name: 12.5, strong: 14 } as const;

/** About how wide words are, px; places have to be known before anything is drawn. */
export const widthOf = (words: string, size: keyof typeof TYPE): number =>
  words.length * TYPE[size] * ADVANCE;

/** Words in lines of at most `letters`; a longer word stands alone. */
export function inLines(words: string, letters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Words that fit a width, cut with an ellipsis where they do not. */
export function cutTo(words: string, width: number, size: keyof typeof TYPE): string {
  const letters = Math.max(1, Math.floor(width / (TYPE[size] * ADVANCE)));
  return words.length <= letters ? words : `${words.slice(0, letters - 1).trimEnd()}…`;
}
