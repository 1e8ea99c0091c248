import { compareText } from "../../domain/compare.ts";
import type { Part } from "../../domain/examination.ts";
import type { PartId, TermId } from "../../domain/ids.ts";
import { ancestors } from "../../domain/region.ts";
import type { Term } from "../../domain/term.ts";
import type { Subject } from "../check.ts";

/** Something that could be looked for on a part. */
export interface Candidate {
  readonly part: PartId;
  readonly feature: TermId;
}

/**
 * What has not been looked for yet: the features looked for on the kind of each part or on a broader kind, but those that something
 * recorded on the part, or a narrower or broader term of it, answers already. Sorted by part, then feature.
 */
export function candidatesOf({ piece, graph }: Subject, features: readonly Term[]): readonly Candidate[] {
  const byKind = new Map<TermId, TermId[]>();
  for (const { id, parts = [] } of features)
    for (const kind of parts) byKind.set(kind, [...(byKind.get(kind) ?? []), id]);
  return piece.parts
    .flatMap((part) => {
      const known = new Set(
        piece.observations
          .filter((made) => made.part === part.id)
          .flatMap(({ feature }) => ancestors(feature, graph.broader)),
      );
      return kindsOf(part, graph.broader)
        .flatMap((kind) => byKind.get(kind) ?? [])
        .filter((feature, i, all) => all.indexOf(feature) === i && !known.has(feature))
        .map((feature): Candidate => ({ part: part.id, feature }));
    })
    .sort((a, b) => compareText(a.part, b.part) || compareText(a.feature, b.feature));
}

const kindsOf = ({ kind }: Part, broader: Subject["graph"]["broader"]): readonly TermId[] =>
  kind === undefined ? [] : ancestors(kind, broader);
