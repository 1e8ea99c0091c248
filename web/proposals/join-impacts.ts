import { reviewersNeeded } from "#server/domain/proposals/review.ts";
import type { Impact } from "./use-impact.ts";

/**
 * What is known of an impact with what an answer that went on from there adds. Nothing where both are not of one revision: then
 * it is to be worked out from the beginning.
 */
export function joinImpacts(known: Impact, come: Impact): Impact | undefined {
  if (known.revision !== come.revision) return undefined;
  const movedCount = known.movedCount + come.movedCount;
  return {
    ...known,
    ...{ looked: known.looked + come.looked, reached: come.reached, left: come.left },
    ...{ movedCount, hidden: known.hidden + come.hidden },
    moved: [...known.moved, ...come.moved],
    reviewersNeeded: reviewersNeeded(movedCount),
  };
}
