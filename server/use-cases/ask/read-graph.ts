import type { Claim } from "../../domain/claim.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { readAll } from "../../ports/read-all.ts";
import type { Store } from "../../ports/store.ts";

/** All terms and claims as they stood at one revision, read page by page. */
export async function readGraph(
  { store }: { readonly store: Store },
  at: RevisionNumber,
): Promise<{ readonly terms: readonly Term[]; readonly claims: readonly Claim[] }> {
  return {
    terms: await readAll((page) => store.listTerms({}, page, at)),
    claims: await readAll((page) => store.listClaims({}, page, at)),
  };
}
