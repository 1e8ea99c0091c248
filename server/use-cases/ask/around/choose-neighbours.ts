import { compareText, firstDifference } from "../../../domain/compare.ts";
import type { TermId } from "../../../domain/ids.ts";
import { LINK_KINDS, type Link, type LinkKind } from "./link.ts";

/** Terms that one kind of link joins to a term, on one of its sides. */
export interface Group {
  readonly kind: LinkKind;
  /** The links go out from the term. */
  readonly isOutgoing: boolean;
  /** Those that most claims speak of first, then by id. */
  readonly terms: readonly TermId[];
}

/** Neighbours of a term by how they are joined to it, in the order they are read; each stands in its first group only. */
export function groupNeighbours(
  of: TermId,
  links: readonly Link[],
  known: ReadonlySet<TermId>,
): readonly Group[] {
  const taken = new Set([of, ...known]);
  return LINK_KINDS.flatMap((kind) =>
    [true, false].flatMap((isOutgoing): Group[] => {
      const terms = links
        .filter((link) => link.kind === kind && (isOutgoing ? link.from : link.to) === of)
        .map((link) => ({ other: isOutgoing ? link.to : link.from, weight: link.claims.length }))
        .filter(({ other }) => !taken.has(other))
        .sort((a, b) => firstDifference(b.weight - a.weight, compareText(a.other, b.other)))
        .map(({ other }) => other);
      for (const term of terms) taken.add(term);
      return terms.length === 0 ? [] : [{ kind, isOutgoing, terms }];
    }),
  );
}

/** How many of each group are shown: at most `each` of one, at most `all` together, no group starved for another. */
export function shareOut(sizes: readonly number[], each: number, all: number): readonly number[] {
  const shares = sizes.map(() => 0);
  let left = all;
  for (let round = 0; round < each && left > 0; round++)
    for (const [i, size] of sizes.entries()) {
      const share = shares[i] ?? 0;
      if (left === 0 || share !== round || size <= share) continue;
      shares[i] = share + 1;
      left -= 1;
    }
  return shares;
}
