import type { TermId } from "../../domain/ids.ts";
import { isWithin } from "../../domain/region.ts";
import type { KnownGraph } from "../known-graph.ts";

/** Whether forms are named by the claims about a feature, and this one, or one within or around it, is none of them. */
export function isOfOtherForm(
  feature: TermId,
  form: TermId,
  forms: { readonly has: (term: TermId) => boolean },
  graph: KnownGraph,
): boolean {
  const named = graph
    .claimsOf(feature)
    .flatMap((claim) => [
      ...("scope" in claim && claim.scope.form !== undefined ? [claim.scope.form] : []),
      ...(claim.relation === "typical of" && forms.has(claim.object) ? [claim.object] : []),
    ]);
  return (
    named.length > 0 &&
    !named.some((one) => isWithin(one, form, graph.broader) || isWithin(form, one, graph.broader))
  );
}
