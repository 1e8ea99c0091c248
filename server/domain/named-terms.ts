import type { Claim } from "./claim.ts";
import type { TermId } from "./ids.ts";

/** Every term a claim names: subject, scope, ways, object, regions, ends of a spread, condition. Each once, in that order. */
export function namedTerms(claim: Claim): readonly TermId[] {
  const named = new Set<TermId>();
  const add = (...ids: readonly (TermId | undefined)[]): void => {
    for (const id of ids) if (id !== undefined) named.add(id);
  };
  if ("subject" in claim) add(claim.subject);
  if ("scope" in claim) add(claim.scope.region, claim.scope.form, claim.scope.part);
  switch (claim.relation) {
    case "requires":
      for (const way of claim.ways) add(...way);
      break;
    case "typical of":
      add(claim.object);
      break;
    case "confined to":
      add(...claim.regions);
      break;
    case "spread to":
      add(claim.from, claim.to);
      break;
    case "void when":
      add(claim.condition);
      break;
  }
  return [...named];
}
