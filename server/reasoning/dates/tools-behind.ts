import type { TermId } from "../../domain/ids.ts";
import type { View } from "../view.ts";

/** Terms without which a feature cannot be made: in every way of one of its closed lists. */
export function toolsBehind(feature: TermId, view: View): readonly TermId[] {
  const { lists } = view.resolve(feature);
  return [
    ...new Set(
      lists.flatMap(({ claim: { ways } }) =>
        (ways[0] ?? []).filter((term) => ways.every((way) => way.includes(term))),
      ),
    ),
  ];
}
