import { ALL_YEARS, isEmpty, isWithin, meet, type Span, type Years } from "../../domain/years.ts";
import type { Window } from "./windows.ts";

/**
 * Findings whose windows have gaps and could stand in a clash of three or more that no pair shows (E27). Without gaps pairs find
 * everything (Helly 1923, one dimension). With them, whatever else a clash holds narrows to one run of years between at most two windows;
 * if all windows with gaps that are compatible with those two leave a year of every such run, there is no such clash.
 */
export function gapsUnsearched(windows: readonly Window[], claimed: Span): readonly string[] {
  const gapped = windows.filter(({ years }) => years.length > 1);
  if (gapped.length === 0) return [];
  const runs = distinct([
    ALL_YEARS,
    [claimed],
    ...windows.map(({ years }) => years).filter((years) => years.length === 1),
  ]);
  const named = new Set<string>();
  for (const [i, a] of runs.entries())
    for (const b of runs.slice(i)) {
      const run = meet(a, b);
      if (isEmpty(run)) continue;
      const compatible = gapped.filter(({ years }) => !isEmpty(meet(years, a)) && !isEmpty(meet(years, b)));
      const left = compatible.map(({ years }) => years).reduce(meet, run);
      if (!isEmpty(left)) continue;
      for (const { years, check } of compatible) if (!isWithin(run, years)) named.add(check.id);
    }
  return [...named].sort();
}

function distinct(all: readonly Years[]): readonly Years[] {
  return [...new Map(all.map((years) => [years.flat().join(" "), years])).values()];
}
