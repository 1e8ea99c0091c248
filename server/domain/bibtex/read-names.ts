import type { CslName } from "../source.ts";
import { readTex } from "./read-tex.ts";

/** Names as CSL-JSON has them, or a sentence that says why they cannot be read. */
export type ReadNames = { readonly names: readonly CslName[]; readonly unread: readonly string[] } | string;

/**
 * A list of names that `and` parts, each as "First von Last", "von Last, First" or "von Last, Jr, First"; what stands
 * in braces is one word, and a name all in braces is that of a body. After O. Patashnik, BibTeXing (1988), section 4.
 */
export function readNames(value: string): ReadNames {
  const names: CslName[] = [];
  const unread: string[] = [];
  const plain = (words: readonly string[]): string => {
    const read = readTex(words.join(" "));
    unread.push(...read.unread);
    return read.text;
  };
  for (const written of splitAt(value, AND)) {
    const name = written.trim();
    if (name === "") return "There is no name before or behind an “and”.";
    if (isWholeGroup(name) || name === "others") {
      names.push({ literal: plain([name]) });
      continue;
    }
    const parts = splitAt(name, COMMA).map((part) => splitAt(part.trim(), SPACE).filter(Boolean));
    if (parts.length > 3) return `“${plain([name])}” has more than two commas.`;
    if ((parts[0]?.length ?? 0) === 0) return `“${plain([name])}” has nothing before its comma.`;
    names.push(nameOf(parts, plain));
  }
  return { names, unread };
}

function nameOf(parts: readonly (readonly string[])[], plain: (words: readonly string[]) => string): CslName {
  const [first = [], ...rest] = parts;
  const given = parts.length === 1 ? first.slice(0, givenOf(first)) : (rest.at(-1) ?? []);
  const last = parts.length === 1 ? first.slice(givenOf(first)) : first;
  const particles = last.slice(0, last.slice(0, -1).findLastIndex(isSmall) + 1);
  const suffix = parts.length === 3 ? (rest[0] ?? []) : [];
  const fields: readonly (readonly [keyof CslName, readonly string[]])[] = [
    ["family", last.slice(particles.length)],
    ["given", given],
    ["dropping-particle", particles],
    ["suffix", suffix],
  ];
  return Object.fromEntries(
    fields.flatMap(([field, words]) => (words.length === 0 ? [] : [[field, plain(words)]])),
  );
}

/** How many words come before the particle, or before the last word if there is none. */
function givenOf(words: readonly string[]): number {
  const particle = words.slice(0, -1).findIndex(isSmall);
  return particle < 0 ? words.length - 1 : particle;
}

/** Begins with a small letter outside of braces, those of a single accented letter aside. */
function isSmall(word: string): boolean {
  if (/^\{(?!\\)/.test(word)) return false;
  const letter = readTex(word).text.match(/\p{L}/u)?.[0] ?? "";
  return letter !== letter.toUpperCase();
}

const isWholeGroup = (name: string): boolean =>
  name.startsWith("{") && !name.startsWith("{\\") && closeOf(name) === name.length - 1;

function closeOf(name: string): number {
  let depth = 0;
  for (let at = 0; at < name.length; at += 1) {
    if (name[at] === "{") depth += 1;
    if (name[at] === "}") depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

const AND = /\s+and(?=\s|$)|^and(?=\s)/iy;
const COMMA = /,/y;
const SPACE = /(?:\s|(?<!\\)~)+/y;

/** Parts a text at what a sticky pattern finds outside of braces. */
function splitAt(text: string, pattern: RegExp): readonly string[] {
  const pieces: string[] = [];
  let from = 0;
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === "{") depth += 1;
    if (text[at] === "}") depth -= 1;
    if (depth !== 0) continue;
    pattern.lastIndex = at;
    const [found] = pattern.exec(text) ?? [];
    if (found === undefined || found === "") continue;
    pieces.push(text.slice(from, at));
    from = at + found.length;
    at = from - 1;
  }
  return [...pieces, text.slice(from)];
}
