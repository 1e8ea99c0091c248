import { namesOf } from "../domain/names-of.ts";
import type { ImportIndex } from "./import-index.ts";
import type { ImportLine } from "./read-import-line.ts";

/** Things that go together, as they name each other, in the order of their lines. */
export type Group = readonly ImportLine[];

/**
 * Puts things into an order in which each comes after what it names, or together with it where they name each other.
 * What names something that has not come by waits.
 */
export interface Pool {
  /** Takes a thing; gives what can go now, it and what waited for it, each group after what it names. Often nothing. */
  take(line: ImportLine): readonly Group[];
}

interface Waiting {
  readonly line: ImportLine;
  /** What it names and has not gone. */
  readonly names: Set<string>;
  /** Something still to come, without which it could not go when it was last asked. */
  lacks?: string;
}

const NOTHING: readonly Group[] = [];

/**
 * The index knows the line of an id that the file brings, and which lines need be looked at; what else is named stands in the
 * store. The work goes with what the things name, in whatever order they come: what waits is looked at only when something that it names comes or goes.
 */
export function openPool(index: Pick<ImportIndex, "lineOf" | "isWaiting" | "isFirst" | "setGone">): Pool {
  const waits = new Map<string, Waiting>();
  /** Who waits for an id. */
  const waitingFor = new Map<string, Waiting[]>();
  let last = 0;
  const isToCome = (id: string): boolean => (index.lineOf(id) ?? 0) > last;
  const lackedBy = (line: ImportLine): Set<string> =>
    new Set(
      namesOf(line)
        .map(({ id }) => id)
        .filter((id) => waits.has(id) || isToCome(id)),
    );

  /** It and all that it names, near and far, that has not gone; nothing where some of that is still to come. */
  const groupOf = (first: Waiting): readonly Waiting[] | undefined => {
    const group = new Set([first]);
    // A set iterated over while it grows.
    for (const each of group) {
      if (each.lacks !== undefined && isToCome(each.lacks)) {
        first.lacks = each.lacks;
        return undefined;
      }
      for (const id of each.names) {
        const named = waits.get(id);
        if (named !== undefined) group.add(named);
        else {
          first.lacks = id;
          return undefined;
        }
      }
    }
    return [...group].sort((a, b) => a.line.line - b.line.line);
  };

  const goingWith = (first: Group): readonly Group[] => {
    const groups = [first];
    // A list iterated over while it grows.
    for (const group of groups)
      for (const { thing } of group) {
        const others = waitingFor.get(thing.id) ?? [];
        waitingFor.delete(thing.id);
        for (const other of others) {
          other.names.delete(thing.id);
          const next = waits.has(other.line.thing.id) ? letGo(other) : undefined;
          if (next !== undefined) groups.push(next);
        }
      }
    return groups;
  };
  const letGo = (first: Waiting): Group | undefined =>
    groupOf(first)?.map(({ line }) => {
      waits.delete(line.thing.id);
      index.setGone(line.line);
      return line;
    });

  return {
    take: (line) => {
      last = line.line;
      const isFree = !index.isWaiting(last) || (waits.size === 0 && !index.isFirst(last));
      const names = isFree ? undefined : lackedBy(line);
      if (names === undefined || names.size === 0) {
        index.setGone(last);
        return waits.size === 0 ? [[line]] : goingWith([line]);
      }
      const waiting: Waiting = { line, names };
      waits.set(line.thing.id, waiting);
      for (const id of names) {
        const others = waitingFor.get(id);
        if (others === undefined) waitingFor.set(id, [waiting]);
        else others.push(waiting);
      }
      const group = letGo(waiting);
      return group === undefined ? NOTHING : goingWith(group);
    },
  };
}
