import type { Claim } from "../../domain/claim.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Term } from "../../domain/term.ts";
import { LARGEST_PAGE, type Page, type PageAsk, type Store } from "../../ports/store.ts";

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

async function readAll<Row>(list: (page: PageAsk) => Promise<Page<Row>>): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (let after: string | undefined; ; ) {
    const page = await list({ first: LARGEST_PAGE, ...(after === undefined ? {} : { after }) });
    rows.push(...page.rows);
    after = page.cursors.at(-1);
    if (!page.hasMore || after === undefined) return rows;
  }
}
