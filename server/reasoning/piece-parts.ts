import type { Piece } from "../domain/examination.ts";
import type { PartId } from "../domain/ids.ts";

/** How the parts of one piece hang together. */
export interface PieceParts {
  /** The part that stands for all parts `together` with this one: the first of their ids. */
  readonly groupOf: (part: PartId) => PartId;
  /** The part itself, what it is within, what is within it, and what is together with it (E13). */
  readonly near: (part: PartId) => ReadonlySet<PartId>;
}

/** Reads the tree of parts and the groups that share one origin. */
export function readParts({ parts, together }: Piece): PieceParts {
  const within = new Map(parts.map((part) => [part.id, part.within]));
  const group = new Map(parts.map((part) => [part.id, part.id]));
  const groupOf = (part: PartId): PartId => group.get(part) ?? part;
  for (const joined of together) {
    const names = new Set(joined.map(groupOf));
    const first = [...names].sort()[0];
    if (first === undefined) continue;
    for (const [part, name] of group) if (names.has(name)) group.set(part, first);
  }
  const above = (part: PartId): Set<PartId> => {
    const found = new Set<PartId>();
    for (let next: PartId | undefined = part; next !== undefined && !found.has(next); next = within.get(next))
      found.add(next);
    return found;
  };
  const chains = new Map(parts.map(({ id }) => [id, above(id)]));
  const near = (part: PartId): ReadonlySet<PartId> =>
    new Set(
      parts
        .map(({ id }) => id)
        .filter(
          (id) => chains.get(part)?.has(id) || chains.get(id)?.has(part) || groupOf(id) === groupOf(part),
        ),
    );
  return { groupOf, near };
}
