import type { TermId } from "../../domain/ids.ts";
import type { Position } from "../../domain/position.ts";
import type { Telling } from "./telling.ts";

/** What was chosen for one part, over all positions. */
export interface Chosen {
  readonly part: TermId;
  readonly entries: readonly Telling[];
  readonly again: readonly Telling[];
  /** How many features would tell something on it. */
  readonly all: number;
}

/** What to look for on one part from one position. */
export interface SheetSection {
  readonly position: Position;
  readonly part: TermId;
  /** Told in full. */
  readonly entries: readonly Telling[];
  /** Told in full on a part before: looked for here too. */
  readonly again: readonly TermId[];
  /** What else would tell something on this part; counted at its last section. */
  readonly more: number;
}

/**
 * Shares out what was chosen for each part over the positions, in the order in which they are read (F5). A feature is
 * named again only after it was told in full; a part without anything to look for is left out.
 */
export function shareOut(walk: readonly (readonly [Position, readonly Chosen[]])[]): readonly SheetSection[] {
  const told = new Set<TermId>();
  const left = new Map<TermId, number>();
  const sections: SheetSection[] = [];
  for (const [position, parts] of walk)
    for (const { part, all, ...chosen } of parts) {
      const entries = chosen.entries.filter((one) => one.position === position);
      const again = chosen.again
        .filter((one) => one.position === position && told.has(one.feature))
        .map(({ feature }) => feature);
      for (const { feature } of entries) told.add(feature);
      if (entries.length + again.length === 0) continue;
      const more = (left.get(part) ?? all) - entries.length - again.length;
      left.set(part, more);
      sections.push({ position, part, entries, again, more });
    }
  return sections.map((section, i) =>
    sections.slice(i + 1).some(({ part }) => part === section.part) ? { ...section, more: 0 } : section,
  );
}
