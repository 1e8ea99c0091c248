import { citeSource } from "./domain/cite-source.ts";
import type { Citation, Claim } from "./domain/claim.ts";
import type { SourceId } from "./domain/ids.ts";
import { locatorBeside } from "./domain/locator-beside.ts";
import type { RevisionNumber } from "./domain/revision.ts";
import type { Source } from "./domain/source.ts";
import type { Store } from "./ports/store.ts";

const cite = (citation: Citation, sources: ReadonlyMap<SourceId, Source>): string => {
  if (citation.basis !== "published") return citation.basis;
  const source = sources.get(citation.source);
  const text = source === undefined ? citation.source : citeSource(source);
  return `${[text, locatorBeside(text, citation.locator)].filter(Boolean).join(", ")} (published)`;
};

/** What each claim cites, as one line a claim: id, source and locator, basis. Sources are read as they stood. */
export async function citationsAsText(
  store: Store,
  claims: readonly Claim[],
  at: RevisionNumber,
): Promise<readonly string[]> {
  const published = claims.flatMap(({ citations }) =>
    citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : [])),
  );
  const sources = await store.sources([...new Set(published)], at);
  return claims.map(
    ({ id, citations }) => `${id}: ${citations.map((each) => cite(each, sources)).join("; ")}`,
  );
}
