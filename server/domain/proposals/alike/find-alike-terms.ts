import { foldName } from "../../fold-name.ts";
import type { Term } from "../../term.ts";
import type { Alike } from "./alike.ts";

/** Terms that share a label with one that is being written, of whatever kind: accents, capitals and signs aside. */
export function findAlikeTerms(
  draft: Pick<Term, "label"> & Partial<Pick<Term, "id" | "otherLabels">>,
  standing: readonly Term[],
): readonly Alike[] {
  const labels = labelsOf(draft);
  return standing
    .filter((term) => term.id !== draft.id && labelsOf(term).some((label) => labels.includes(label)))
    .map(({ id }) => ({ kind: "term", id, by: "same label" }));
}

const labelsOf = ({ label, otherLabels = [] }: Pick<Term, "label" | "otherLabels">): readonly string[] =>
  [label, ...otherLabels].map(foldName).filter((one) => one !== "");
