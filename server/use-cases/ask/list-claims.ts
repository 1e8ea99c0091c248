import type { Claim } from "../../domain/claim.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { ClaimFilter, Page, PageAsk, Store } from "../../ports/store.ts";

/** Claims by subject, by what they name, by source or by relation, sorted by id. */
export const listClaims = (
  { store }: { readonly store: Store },
  filter: ClaimFilter,
  page: PageAsk,
  at?: RevisionNumber,
): Promise<Page<Claim>> => store.listClaims(filter, page, at);
