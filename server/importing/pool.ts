import { namesOf } from "../domain/names-of.ts";
import type { ImportIndex } from "./import-index.ts";
import type { ImportLine } from "./read-import-line.ts";

/**
 * Puts things into an order in which each comes after what it names, or together with it where they name each other.
 * What names something that has not come by waits.
 */
export interface Pool {
  /** Takes a thing; gives it back if nothing it names has still to come. */
  take(line: ImportLine): boolean;
  /** Groups of what waited and can go now: each names only what went before it and what is in it. */
  release(): readonly (readonly ImportLine[])[];
  readonly waiting: number;
}

/** The index knows the line of an id that the file brings, and which lines need be looked at; what else is named stands in the store. */
export function openPool(index: Pick<ImportIndex, "lineOf" | "isWaiting" | "isFirst">): Pool {
  const waits = new Map<number, ImportLine>();
  let last = 0;
  /** What it names that waits too, or comes later. */
  const namedBy = (line: ImportLine): readonly number[] =>
    namesOf(line).flatMap(({ id }) => {
      const named = index.lineOf(id);
      return named !== undefined && (named > last || waits.has(named)) ? [named] : [];
    });
  return {
    get waiting() {
      return waits.size;
    },
    take: (line) => {
      last = line.line;
      if (!index.isWaiting(line.line)) return true;
      // What waits for others alone need not be looked at once none of them is left.
      if ((waits.size === 0 && !index.isFirst(line.line)) || namedBy(line).length === 0) return true;
      waits.set(line.line, line);
      return false;
    },
    release: () => {
      const ready = readyOf(waits, namedBy);
      const groups: ImportLine[][] = [];
      for (const line of ready.values()) {
        if (!waits.has(line.line)) continue;
        const group = closureOf(line, ready, namedBy);
        for (const each of group) waits.delete(each.line);
        groups.push(group);
      }
      return groups;
    },
  };
}

type NamedBy = (line: ImportLine) => readonly number[];

/** The most that can go together: what is left when all that names something that is not among it is put aside. */
function readyOf(waits: ReadonlyMap<number, ImportLine>, namedBy: NamedBy): ReadonlyMap<number, ImportLine> {
  const ready = new Map(waits);
  for (let before = -1; before !== ready.size; ) {
    before = ready.size;
    for (const [number, line] of ready)
      if (namedBy(line).some((named) => !ready.has(named))) ready.delete(number);
  }
  return ready;
}

/** A thing with all that it names, near and far, of what has not gone yet. */
function closureOf(line: ImportLine, ready: ReadonlyMap<number, ImportLine>, namedBy: NamedBy): ImportLine[] {
  const group = new Map<number, ImportLine>([[line.line, line]]);
  // A map iterated over while it grows.
  for (const each of group.values())
    for (const named of namedBy(each)) {
      const other = ready.get(named);
      if (other !== undefined) group.set(named, other);
    }
  return [...group.values()].sort((a, b) => a.line - b.line);
}
