import type { Claim } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { nameInSentence } from "../../domain/name-in-sentence.ts";
import { namedTerms } from "../../domain/named-terms.ts";
import type { Term } from "../../domain/term.ts";
import { claimInWords } from "../../reasoning/explain/claim-in-words.ts";

/** The claim as a sentence. `find` reads terms as they stood when the claim did; one that is missing shows its id. */
export async function sayClaim(
  find: (ids: readonly TermId[]) => Promise<readonly Term[]>,
  claim: Claim,
): Promise<string> {
  const terms = await find(namedTerms(claim));
  const labels = new Map(terms.map((term) => [term.id, nameInSentence(term)]));
  return claimInWords(claim, (id) => labels.get(id) ?? id);
}
