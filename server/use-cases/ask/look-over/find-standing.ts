import type { Standing } from "../../../domain/graph-view.ts";
import { id } from "../../../domain/ids.ts";
import type { Store } from "../../../ports/store.ts";

/** What stands under an id on the newest revision, whatever it is. */
export async function findStanding(store: Store, named: string): Promise<Standing | undefined> {
  const [terms, claims, sources] = await Promise.all([
    store.terms([id(named)]),
    store.claims([id(named)]),
    store.sources([id(named)]),
  ]);
  for (const thing of terms.values()) return { kind: "term", thing };
  for (const thing of claims.values()) return { kind: "claim", thing };
  for (const thing of sources.values()) return { kind: "source", thing };
  return undefined;
}
