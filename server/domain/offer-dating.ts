import { dateInOtherWords } from "./date-in-other-words.ts";
import type { Dating, Role } from "./dating.ts";
import { fourDigits } from "./masked-year.ts";
import type { Year } from "./years.ts";

type Read = (text: string, role: Role) => Dating | undefined;

/**
 * The canonical form of what was probably meant by a date that cannot be read: the first guess that can be. `read`
 * answers `undefined` for what cannot be read.
 */
export function offerDating(text: string, role: Role, read: Read): string | undefined {
  if (text.length > 100) return undefined;
  return guesses(text, role, read).find((guess) => read(guess, role) !== undefined);
}

function guesses(text: string, role: Role, read: Read): readonly string[] {
  const tidy = text
    .trim()
    .replace(/\s+/g, " ")
    .replace(/[‐‑‒–—−]/g, "-");
  const words = tidy.toLowerCase();
  const tight = tidy.replaceAll(" ", "");
  return [
    tidy,
    tight,
    ...listOtherwise(tight, role, read),
    ...fractionOfCentury(words),
    ...[dateInOtherWords(words)].filter((date) => date !== undefined),
    ...openSpan(words, role),
    ...closedSpan(words),
  ];
}

/** A list that is turned round, holds unknown digits where a known year is wanted, or stands for a period. */
function listOtherwise(list: string, role: Role, read: Read): readonly string[] {
  if (!/^[[{].*[\]}]$/.test(list)) return [];
  const turned = list.replace(/([^[{,]+)\.\.([^\]},]+)/g, "$2..$1");
  const filled = list.replace(/([\dX]{4})\.\.([\dX]{4})/g, (_, from: string, to: string) => {
    return `${from.replaceAll("X", "0")}..${to.replaceAll("X", "9")}`;
  });
  const lists = [list, turned, filled, `[${list.slice(1, -1)}]`];
  if (role === "event") return lists;
  return lists.flatMap((event) => read(event, "event") ?? []).map(hullAsSpan);
}

function hullAsSpan({ begin, end }: Dating): string {
  const print = (year: Year): string => (Number.isFinite(year) ? fourDigits(year) : "..");
  return `${print(begin[0])}/${print(end[1])}`;
}

const ORDINALS = ["first", "second", "third", "fourth"];
const PARTS_OF_CENTURY: Readonly<Record<string, number>> = { half: 2, third: 3, quarter: 4 };

/** "last quarter of the 18th century": 1775/1799. */
function fractionOfCentury(words: string): readonly string[] {
  const found = /^(?:the )?(first|second|third|fourth|last) (half|third|quarter) of (.+)$/.exec(words);
  const century = found && dateInOtherWords(found[3] as string);
  if (!found || !century || !/^\d\dXX$/.test(century)) return [];
  const parts = PARTS_OF_CENTURY[found[2] as string] as number;
  const nth = found[1] === "last" ? parts - 1 : ORDINALS.indexOf(found[1] as string);
  const first = Number(century.slice(0, 2)) * 100;
  const year = (share: number): string => fourDigits(first + Math.floor((100 * share) / parts));
  return [`${year(nth)}/${fourDigits(Number(year(nth + 1)) - 1)}`];
}

/** "before 1750", "1750 onwards", `1750..` outside a list. */
function openSpan(words: string, role: Role): readonly string[] {
  const before = /^(?:before|until|till|up to|to|by|\.\.|open\/) ?(.+)$/.exec(words)?.[1];
  const after =
    /^(?:after|from|since) (.+)$/.exec(words)?.[1] ??
    /^(.+?) ?(?:-|\.\.|\/ ?open|on|onwards?|or later|or after|\+)$/.exec(words)?.[1];
  const unknown = [/^unknown\/(.+)$/.exec(words)?.[1], /^(.+)\/unknown$/.exec(words)?.[1]];
  const [last, first] = [before, after].map((date) => date && dateInOtherWords(date));
  return [
    ...(last ? [role === "event" ? `[..${last}]` : `../${last}`, `../${last}`] : []),
    ...(first ? [role === "event" ? `[${first}..]` : `${first}/..`, `${first}/..`] : []),
    ...(unknown[0] ? [`/${unknown[0]}`] : []),
    ...(unknown[1] ? [`${unknown[1]}/`] : []),
  ];
}

/** "1750-1760", "between 1750 and 1760", "c.1750-60", and a span whose ends are the wrong way round. */
function closedSpan(words: string): readonly string[] {
  const turned = words.includes("/") ? words.toUpperCase().split("/").toReversed().join("/") : "";
  const found = /^(?:from |between )?(.+?) ?(?:-|\/|\.\.| to | and | until | till ) ?(\S.*)$/.exec(words);
  const [left, right] = [found?.[1] ?? "", inFull(found?.[1] ?? "", found?.[2] ?? "")];
  const isShort = [left, right].some((side) => /^[\dux]{0,3}$/.test(side));
  const [from, to] = isShort ? [] : [dateInOtherWords(left), dateInOtherWords(right)];
  if (from === undefined || to === undefined) return [turned];
  const aboutBoth =
    /^(?:from |between )?(?:circa|ca\.?|c\.?|about|around) ?\d/.test(words) && /^\d{4}$/.test(to);
  return [`${from}/${to}${aboutBoth ? "~" : ""}`, turned, right === found?.[2] ? `${to}/${from}` : ""];
}

/** `1760-80` and `1750/1` leave out the digits that the two years share. */
function inFull(left: string, right: string): string {
  const year = /\d{4}/.exec(left)?.[0];
  const short = /^(\d{1,2})[?~%]?$/.exec(right)?.[1];
  return year && short ? year.slice(0, 4 - short.length) + right : right;
}
