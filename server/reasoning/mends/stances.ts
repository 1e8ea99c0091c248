import type { Span, Year } from "../../domain/years.ts";
import type { Item } from "./items.ts";
import { spanAt } from "./spans.ts";
import type { Pair, Sighting, Unit, Variant } from "./unit.ts";

/** One way to deal with a sighting: give up `item`, and one of each clause. */
export interface Treatment {
  readonly item: Item | undefined;
  readonly clauses: readonly (readonly Item[])[];
}

/** A sighting that does not fit; one of the treatments it is. */
export interface Need {
  readonly sighting: string;
  readonly treatments: readonly Treatment[];
}

/** A state and a span for one unit, with everything that does not fit then. */
export interface Stance {
  /** Given up for it: nothing if the unit is of the first making. */
  readonly item: Item | undefined;
  readonly needs: readonly Need[];
}

/** Which bounds of a sighting miss a span, by number. */
const missing = ({ bounds }: Sighting, span: number): readonly number[] =>
  bounds.every(({ fits }) => fits[span] === 1)
    ? NONE
    : bounds.flatMap(({ fits }, i) => (fits[span] === 1 ? [] : [i]));
const NONE: readonly number[] = [];
const isIn = (a: readonly number[], b: readonly number[]): boolean => a.every((one) => b.includes(one));

/**
 * Works out the stances of units in a year of making, each once. In units that are recorded as separate from others, being later or
 * earlier than the piece can count even in years in which all fits alike.
 */
export function stancesOf(
  all: readonly Unit[],
  pairs: readonly Pair[],
): (unit: number, year: Year) => readonly Stance[] {
  const paired = new Set(pairs.flatMap(({ units }) => units));
  const readers = all.map((unit, i) => unit.variants.map((one) => readVariant(one, unit, paired.has(i))));
  return (unit, year) => {
    const [only, ...others] = readers[unit] ?? [];
    return others.length === 0 ? (only?.(year) ?? []) : (readers[unit] ?? []).flatMap((read) => read(year));
  };
}

function readVariant(
  { spans, sightings }: Variant,
  { later, reused }: Unit,
  isPaired: boolean,
): (year: Year) => readonly Stance[] {
  const alteredIn = sightings.map((sighting) => laterWork(sighting, spans.length));
  const misses = spans.map((_, span) => sightings.map((sighting) => missing(sighting, span)));
  const count = misses.map((each) => each.reduce((sum, one) => sum + one.length, 0));
  const missesLess = (a: number, b: number): boolean =>
    (misses[a] ?? []).every((one, i) => isIn(one, misses[b]?.[i] ?? []));

  const needsAt = once((span: number): readonly Need[] =>
    sightings.flatMap((sighting, i) => {
      const missed = misses[span]?.[i] ?? [];
      if (missed.length === 0) return [];
      const clauses = (left: readonly number[]) => left.map((bound) => sighting.bounds[bound]?.drops ?? []);
      const { misread, altered } = sighting;
      const treatments: Treatment[] = [{ item: undefined, clauses: clauses(missed) }];
      if (misread !== undefined) treatments.push({ item: misread, clauses: [] });
      if (altered !== undefined)
        for (const left of alteredIn[i]?.(span) ?? [])
          if (!isIn(missed, left)) treatments.push({ item: altered, clauses: clauses(left) });
      const can = treatments.filter((treatment) => treatment.clauses.every(({ length }) => length > 0));
      return [{ sighting: sighting.name, treatments: can }];
    }),
  );
  const stance = (item: Item | undefined, span: number): readonly Stance[] => {
    const needs = needsAt(span);
    return needs.some(({ treatments }) => treatments.length === 0) ? [] : [{ item, needs }];
  };

  /** Spans of a range that no other of it betters: that misses no more and leaves as much room for later work. */
  const bestIn = (from: number, to: number): readonly number[] => {
    const kept: number[] = [];
    for (let span = from; span <= to; span++) {
      if (span > from && missesLess(span - 1, span)) continue;
      if (span < to && missesLess(span + 1, span) && !missesLess(span, span + 1)) continue;
      if (count[span] === 0) return [span];
      kept.push(span);
    }
    if (kept.length > MANY_SPANS) return kept;
    return kept.filter((span) => !kept.some((other) => other < span && missesLess(other, span)));
  };

  const stancesAt = (year: Year, span: number): readonly Stance[] => {
    const original = stance(undefined, span);
    if (count[span] === 0 && !isPaired) return original;
    const [first, last] = spans[span] as Span;
    const lateFrom = isPaired && last > year ? span : span + 1;
    const earlyTo = isPaired && first < year ? span : span - 1;
    return [
      ...original,
      ...(later === undefined
        ? []
        : bestIn(lateFrom, spans.length - 1)
            .filter((late) => isPaired || !missesLess(span, late))
            .flatMap((late) => stance(later, late))),
      ...(reused === undefined ? [] : bestIn(0, earlyTo).flatMap((early) => stance(reused, early))),
    ];
  };
  const known = new Map<number, readonly Stance[]>();
  return (year) => {
    const span = spanAt(spans, year);
    const key = isPaired ? year : span;
    const found = known.get(key) ?? stancesAt(year, span);
    known.set(key, found);
    return found;
  };
}

/** Comparing each with each is left out beyond this: there are then more ways than need be, and none too few. */
const MANY_SPANS = 64;

/** By span, which bounds work done later can miss: the least sets over all spans after it. */
function laterWork(sighting: Sighting, spans: number): (span: number) => readonly (readonly number[])[] {
  const { bounds } = sighting;
  const only = bounds.length === 1 ? bounds[0] : undefined;
  if (only) {
    const last = only.fits.lastIndexOf(1);
    return (span) => (span < last ? [[]] : []);
  }
  let best: readonly (readonly number[])[] = [];
  const after: (readonly (readonly number[])[])[] = [];
  for (let span = spans - 1; span >= 0; span--) {
    after[span] = best;
    const missed = missing(sighting, span);
    if (!best.some((other) => isIn(other, missed)))
      best = [...best.filter((other) => !isIn(missed, other)), missed];
  }
  return (span) => after[span] ?? [];
}

/** The same function of a number, that works out each answer once. */
function once<Value>(work: (key: number) => Value): (key: number) => Value {
  const known = new Map<number, Value>();
  return (key) => {
    const found = known.get(key) ?? work(key);
    known.set(key, found);
    return found;
  };
}
