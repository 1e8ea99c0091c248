import { citeSource } from "../../domain/cite-source.ts";
import { id as idOf } from "../../domain/ids.ts";
import { kindOfId } from "../../domain/kind-of-id.ts";
import type { Store } from "../../ports/store.ts";

/** What terms and sources are called now; one that is gone is called by its id. */
export async function nameFollowed(
  { store }: { readonly store: Store },
  ids: readonly string[],
): Promise<(id: string) => string> {
  const of = (kind: "term" | "source") => ids.filter((id) => kindOfId(id) === kind);
  const terms = await store.terms(of("term").map((id) => idOf<"term">(id)));
  const sources = await store.sources(of("source").map((id) => idOf<"source">(id)));
  return (id) => {
    const source = sources.get(idOf(id));
    return terms.get(idOf(id))?.label ?? (source && citeSource(source)) ?? id;
  };
}
