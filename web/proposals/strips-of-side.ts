import { id } from "#server/domain/ids.ts";
import { readWords } from "#web/answers/read-words.ts";
import type { Examined } from "#web/answers/use-answer.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import { makeStripGroups } from "#web/strips/make-strip-groups.ts";
import { stripsAxis } from "#web/strips/strips-axis.ts";
import type { MovedPieceFieldsFragment } from "./ImpactOfProposal.graphql.ts";

export type Side = NonNullable<MovedPieceFieldsFragment["before"]>;

/** Both answers on a piece, on one axis of years. Claims are not named: what is new among them stands nowhere yet. */
export function stripsOfSide(
  { examination: { piece } }: MovedPieceFieldsFragment,
  before: Side,
  after: Side,
): readonly [Examined, Examined] {
  const parts = piece.parts.map((part) => ({ ...part, id: id<"part">(part.id) }));
  const sides = [before, after].map(({ report, words: given, labels }) => {
    const named = new Map<string, string>(labels.map(({ term, label }) => [term, label]));
    const glossary: Glossary = { labelOf: (term) => named.get(term) ?? term, findClaim: () => undefined };
    const words = readWords(given);
    return { report, words, glossary, groups: makeStripGroups(report, words, parts, glossary) };
  });
  const axis = stripsAxis(
    before.report.attribution.years,
    sides.flatMap(({ groups }) => groups),
    piece.examined,
  );
  return sides.map((side) => ({ kind: "examined", ...side, axis })) as unknown as [Examined, Examined];
}
