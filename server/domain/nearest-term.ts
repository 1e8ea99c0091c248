import type { Term } from "./term.ts";

/** The term whose id or one of whose labels is nearest to a text in spelling, if one is near; the first of equals. */
export function findNearestTerm(text: string, candidates: Iterable<Term>): Term | undefined {
  const wanted = plain(text);
  // One slip of the pen in every four letters still counts as near.
  let least = Math.floor(wanted.length / 4) + 1;
  let nearest: Term | undefined;
  for (const term of candidates)
    for (const name of [term.id, slugOf(term.id), term.label, ...(term.otherLabels ?? [])]) {
      const slips = slipsBetween(wanted, plain(name), least);
      if (slips < least) [least, nearest] = [slips, term];
    }
  return nearest;
}

const slugOf = (id: string): string => id.slice(id.indexOf(".") + 1);
const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, "-");

/** Letters to put, take or change between two texts (Levenshtein 1966), or `limit` if there are as many or more. */
function slipsBetween(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let above = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (above[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(change, (above[j] as number) + 1, (row[j - 1] as number) + 1));
    }
    if (Math.min(...row) >= limit) return limit;
    above = row;
  }
  return Math.min(above.at(-1) as number, limit);
}
