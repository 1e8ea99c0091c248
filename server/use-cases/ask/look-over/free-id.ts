import type { SourceId, TermId } from "../../../domain/ids.ts";
import { id } from "../../../domain/ids.ts";
import { slug } from "../../../domain/slug.ts";
import type { CslItem } from "../../../domain/source.ts";
import { suggestId } from "../../../domain/sources-in/suggest-id.ts";
import type { Store } from "../../../ports/store.ts";

/** Numbers that are tried behind an id before it is left to the commit to refuse it. */
const MOST_TRIED = 50;
const LONGEST = 80;

/** An id of a new source that nothing stands under, and that is not among `taken`. */
export async function freeSourceId(
  store: Store,
  csl: CslItem,
  taken: ReadonlySet<string>,
): Promise<SourceId> {
  const used = new Set(taken);
  for (let tried = 0; ; tried++) {
    const found = id<"source">(suggestId(csl, "", (one) => used.has(one)));
    if (tried >= MOST_TRIED || !(await store.sources([found])).has(found)) return found;
    used.add(found);
  }
}

/** An id of a new term of a kind by its label, that no term has. */
export async function freeTermId(store: Store, kind: string, label: string): Promise<TermId> {
  const base = `${kind}.${slug(label).slice(0, LONGEST) || "unnamed"}`;
  for (let number = 1; ; number++) {
    const found = id<"term">(number === 1 ? base : `${base}-${number}`);
    if (number >= MOST_TRIED || !(await store.terms([found])).has(found)) return found;
  }
}

/** An id of a new claim: what it says in short, and a suffix, since two proposals that wait may say nearly the same. */
export const newClaimId = (says: readonly (string | undefined)[], suffix: string): string => {
  const words = says.map((one) => slug((one ?? "").replace(/^[a-z]+\./, ""))).filter((one) => one !== "");
  return `claim.${words.join("-").slice(0, LONGEST).replace(/-+$/, "")}-${suffix}`;
};
