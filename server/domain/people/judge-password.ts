import { type Problem, problem } from "../problem.ts";

export const SHORTEST_PASSWORD = 12;
export const LONGEST_PASSWORD = 200;
/** Words of this program and of its trade, which somebody who guesses tries first here. */
const HOUSE_WORDS = ["scribeline", "furniture", "antique", "examination", "museum", "provenance", "evidence"];
const ROWS = [
  "abcdefghijklmnopqrstuvwxyz",
  "01234567890",
  "qwertyuiop",
  "asdfghjkl",
  "zxcvbnm",
  "qwertzuiop",
  "azertyuiop",
];

/**
 * Why a password is refused, or nothing. Length alone makes it strong, so no kinds of character are asked for: 12 to 200 characters,
 * none of the common ones (also with something before or behind, or repeated), no run along the alphabet, the digits or a row of
 * keys, and not little more than a word of the house or one of the person's own names. It is judged, and kept, exactly as typed.
 */
export function judgePassword(
  password: string,
  ownNames: readonly string[],
  isCommon: (text: string) => boolean,
): Problem | undefined {
  const refuse = (why: string) => problem("WEAK_PASSWORD", why, ["password"]);
  const characters = [...password].length;
  if (characters < SHORTEST_PASSWORD)
    return refuse(
      `A password has at least ${SHORTEST_PASSWORD} characters; this one has ${characters}. Some words one after the other are easy to keep in mind.`,
    );
  if (characters > LONGEST_PASSWORD)
    return refuse(`A password has at most ${LONGEST_PASSWORD} characters; this one has ${characters}.`);
  const lower = password.toLowerCase();
  if (
    [lower, bare(lower), unitOf(lower), bare(unitOf(lower))].some((text) => text.length > 0 && isCommon(text))
  )
    return refuse(
      "This password is among those that are tried first, or little more than one. Take another.",
    );
  if (new Set(lower).size < 5 || isRun(lower))
    return refuse("This password is a row of like or neighbouring signs. Take another.");
  const tight = joined(lower);
  const near = [...HOUSE_WORDS, ...ownNames.map((name) => joined(name.toLowerCase()))].find(
    (word) => word.length > 2 && tight.includes(word) && [...tight.replaceAll(word, "")].length < 8,
  );
  if (near !== undefined)
    return refuse(
      "This password is little more than a name or a word of this house. Add words, or take another.",
    );
  return undefined;
}

/** Without blanks between the words. */
const joined = (text: string): string => text.replaceAll(/\s/gu, "");

/** Without digits and signs before and behind. */
const bare = (text: string): string => text.replaceAll(/^[^\p{L}]+|[^\p{L}]+$/gu, "");

/** What a text repeats; itself if it repeats nothing. */
const unitOf = (text: string): string => /^(.+?)\1+$/su.exec(text)?.[1] ?? text;

/** Whether a text is but pieces of four or more of a row, either way. */
function isRun(text: string): boolean {
  const rows = ROWS.flatMap((row) => [row, [...row].reverse().join("")]);
  let at = 0;
  while (at < text.length) {
    let length = 0;
    for (let more = 4; at + more <= text.length; more++)
      if (rows.some((row) => row.includes(text.slice(at, at + more)))) length = more;
    if (length === 0) return text.length - at < 3 && at > 0;
    at += length;
  }
  return true;
}
