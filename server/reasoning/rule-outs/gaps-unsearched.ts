import { ALL_YEARS, isEmpty, isWithin, meet, type Span, type Years } from "../../domain/years.ts";
import type { Window } from "./windows.ts";

/** A run of years without a gap, and the findings that leave just this; none for what is claimed and for no bound at all. */
interface Run {
  readonly years: Years;
  readonly findings: ReadonlySet<string>;
}

/**
 * Findings that could stand in a clash of three or more that no pair shows (E27). Without gaps pairs find everything (Helly 1923, one
 * dimension). With them, whatever else a clash holds narrows to one run of years between at most two windows; if all windows
 * with gaps that are compatible with those two leave a year of every such run, there is no such clash.
 */
export function gapsUnsearched(windows: readonly Window[], claimed: Span): readonly string[] {
  const gapped = windows.filter(({ years }) => years.length > 1);
  if (gapped.length === 0) return [];
  const runs = runsOf(windows, claimed);
  const named = new Set<string>();
  for (const [i, a] of runs.entries())
    for (const b of runs.slice(i)) {
      const run = meet(a.years, b.years);
      if (isEmpty(run)) continue;
      const meets =
        ({ years }: Run) =>
        (window: Window) =>
          !isEmpty(meet(window.years, years));
      const compatible = gapped.filter(meets(a)).filter(meets(b));
      if (!isEmpty(compatible.map(({ years }) => years).reduce(meet, run))) continue;
      for (const { years, check } of compatible) if (!isWithin(run, years)) named.add(check.id);
      for (const finding of [...a.findings, ...b.findings]) named.add(finding);
    }
  return [...named].sort();
}

function runsOf(windows: readonly Window[], claimed: Span): readonly Run[] {
  const convex = Map.groupBy(
    windows.filter(({ years }) => years.length === 1),
    ({ years }) => years.flat().join(" "),
  );
  return [
    { years: ALL_YEARS, findings: new Set() },
    { years: [claimed], findings: new Set() },
    ...[...convex.values()].map((alike) => ({
      years: (alike[0] as Window).years,
      findings: new Set(alike.map(({ check }) => check.id)),
    })),
  ];
}
