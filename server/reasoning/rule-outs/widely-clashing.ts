import type { Alike, WideLines } from "./wide-lines.ts";
import { hasBit, isNone, keepCommon, meets, type YearBits } from "./year-line.ts";

/**
 * Of the windows on a line, those that can stand in a clash that no one window and no pair shows; none if there is no such clash.
 * Without gaps pairs find everything (Helly 1923, one dimension). With them, whatever has no gap in a clash narrows to one run
 * between at most two windows; if all windows with gaps that meet both of these leave a year of the run, there is no such clash. A
 * part that is torn between places counts as one more window with gaps.
 */
export function widelyClashing({ line, claimed, fixed, torn }: WideLines): readonly Alike[] {
  const gapped = fixed.filter(({ years }) => years.length > 1);
  if (gapped.length + torn.length === 0) return [];
  const ends: readonly Run[] = [
    { first: 0, last: line.runs - 1, alike: undefined, bits: line.all },
    ...[claimed, ...fixed.filter(({ years }) => years.length === 1)].map((alike) => runOf(alike, line.runs)),
  ];
  const leftByTorn = line.all.slice();
  for (const { bits } of torn) keepCommon(leftByTorn, bits);
  const leftByAll = leftByTorn.slice();
  for (const { bits } of gapped) keepCommon(leftByAll, bits);

  const named = new Set<Alike>();
  for (const [i, a] of ends.entries())
    for (const b of ends.slice(i)) {
      const [first, last] = [Math.max(a.first, b.first), Math.min(a.last, b.last)];
      if (first > last || isAnyIn(leftByAll, first, last)) continue;
      const meeting = gapped.filter(({ bits }) => meets(bits, a.bits) && meets(bits, b.bits));
      const left = a.bits.slice();
      keepCommon(left, b.bits);
      keepCommon(left, leftByTorn);
      for (const { bits } of meeting) keepCommon(left, bits);
      if (!isNone(left)) continue;
      for (const alike of meeting) if (!isAllIn(alike.bits, first, last)) named.add(alike);
      for (const { alike } of [a, b]) if (alike !== undefined) named.add(alike);
    }
  return [...named];
}

/** Years without a gap, from one run of the line to another. */
interface Run {
  readonly first: number;
  readonly last: number;
  readonly alike: Alike | undefined;
  readonly bits: YearBits;
}

function runOf(alike: Alike, runs: number): Run {
  let [first, last] = [0, runs - 1];
  while (!hasBit(alike.bits, first)) first++;
  while (!hasBit(alike.bits, last)) last--;
  return { first, last, alike, bits: alike.bits };
}

function isAnyIn(bits: YearBits, first: number, last: number): boolean {
  for (let run = first; run <= last; run++) if (hasBit(bits, run)) return true;
  return false;
}

function isAllIn(bits: YearBits, first: number, last: number): boolean {
  for (let run = first; run <= last; run++) if (!hasBit(bits, run)) return false;
  return true;
}
