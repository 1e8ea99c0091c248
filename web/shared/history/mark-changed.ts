/** A text with the part of it that is not in the other. */
export interface Marked {
  readonly same: string;
  readonly changed: string;
  readonly rest: string;
}

/** Shorter texts are told whole. */
const LONG = 60;

/** Where two long texts differ, by whole words: from the first that differs to the last. Short ones are all changed. */
export function markChanged(before: string, after: string): readonly [Marked, Marked] {
  const whole = (text: string): Marked => ({ same: "", changed: text, rest: "" });
  if (Math.min(before.length, after.length) < LONG) return [whole(before), whole(after)];
  const [was, is] = [before.split(/(?<=\s)/), after.split(/(?<=\s)/)];
  const most = Math.min(was.length, is.length);
  let start = 0;
  const isSame = (a = "", b = "") => a.trimEnd() === b.trimEnd();
  while (start < most && isSame(was[start], is[start])) start++;
  let end = 0;
  while (end < most - start && isSame(was.at(-1 - end), is.at(-1 - end))) end++;
  const mark = (words: readonly string[]): Marked => ({
    same: words.slice(0, start).join(""),
    changed: words.slice(start, words.length - end).join(""),
    rest: words.slice(words.length - end).join(""),
  });
  return [mark(was), mark(is)];
}
