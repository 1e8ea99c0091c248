import type { Claim } from "./claim.ts";
import type { TermId } from "./ids.ts";
import { namesOf } from "./names-of.ts";

/** Every term a claim names: subject, scope, ways, object, regions, ends of a spread, condition. Each once. */
export function namedTerms(claim: Claim): readonly TermId[] {
  const terms = namesOf({ kind: "claim", thing: claim }).filter(({ kind }) => kind === "term");
  return [...new Set(terms.map(({ id }) => id as TermId))];
}
