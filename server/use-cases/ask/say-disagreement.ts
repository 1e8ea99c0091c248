import type { TermId } from "../../domain/ids.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import type { Term } from "../../domain/term.ts";
import type { Disagreement } from "../../reasoning/disagreements/rule.ts";
import { disagreementInWords } from "../../reasoning/explain/disagreement-in-words.ts";

/** A finding as a sentence. `find` reads terms as they stood when it was found; one that is missing shows its id. */
export async function sayDisagreement(
  find: (ids: readonly TermId[]) => Promise<readonly Term[]>,
  found: Disagreement,
): Promise<string> {
  const terms = await find([found.term, ...(found.region === undefined ? [] : [found.region])]);
  const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
  return disagreementInWords(found, (id) => labels.get(id) ?? id);
}
