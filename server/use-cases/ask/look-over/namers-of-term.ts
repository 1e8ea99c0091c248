import type { Standing } from "../../../domain/graph-view.ts";
import type { TermId } from "../../../domain/ids.ts";
import { namesOf } from "../../../domain/names-of.ts";
import { LARGEST_PAGE, type Store } from "../../../ports/store.ts";
import { everySource } from "./every-source.ts";

/** Everything of the newest revision that names a term. Looks through all terms and sources: for what is asked seldom. */
export async function namersOfTerm(store: Store, term: TermId): Promise<readonly Standing[]> {
  const namers: Standing[] = [];
  const keep = (standing: Standing): void => {
    if (namesOf(standing).some((name) => name.kind === "term" && name.id === term)) namers.push(standing);
  };
  for await (const terms of store.allTerms({})) for (const thing of terms) keep({ kind: "term", thing });
  for (let after: string | undefined, isMore = true; isMore; ) {
    const page = await store.listClaims(
      { naming: term },
      { first: LARGEST_PAGE, ...(after ? { after } : {}) },
    );
    for (const thing of page.rows) keep({ kind: "claim", thing });
    after = page.cursors.at(-1);
    isMore = page.hasMore;
  }
  for (const thing of await everySource(store)) keep({ kind: "source", thing });
  return namers.sort((a, b) => (a.thing.id < b.thing.id ? -1 : 1));
}
