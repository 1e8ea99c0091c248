import type { Piece } from "../domain/examination.ts";
import type { TermId } from "../domain/ids.ts";

/** Every term that a piece names, each once: attribution, kinds and regions of parts, features. */
export function termsOfPiece({ attribution, parts, observations }: Piece): readonly TermId[] {
  const { region, form, style, maker } = attribution;
  const named = [
    ...[region, form, style, maker],
    ...parts.flatMap((part) => [part.kind, part.region]),
    ...observations.map((observation) => observation.feature),
  ];
  return [...new Set(named.filter((term) => term !== undefined))];
}
