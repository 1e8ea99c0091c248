import type { Claim } from "../domain/claim.ts";
import { namedTerms } from "../domain/named-terms.ts";
import { claimInWords } from "../reasoning/explain/claim-in-words.ts";
import type { AsOf } from "./as-of.ts";
import type { Loaders } from "./loaders.ts";

/** The claim as a sentence, with the labels of its revision. */
export async function sayClaim(load: Loaders, claim: AsOf<Claim>): Promise<string> {
  const terms = await load.terms.many(namedTerms(claim), claim.at);
  const labels = new Map(terms.map((term) => [term.id, term.label]));
  return claimInWords(claim, (id) => labels.get(id) ?? id);
}
