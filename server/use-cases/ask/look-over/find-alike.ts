import type { Change } from "../../../domain/change.ts";
import type { Claim, Relation } from "../../../domain/claim.ts";
import { type Draft, isDraft, isId, listOf } from "../../../domain/draft.ts";
import { id, type TermId } from "../../../domain/ids.ts";
import type { Alike } from "../../../domain/proposals/alike/alike.ts";
import { findAlikeClaims } from "../../../domain/proposals/alike/find-alike-claims.ts";
import { findAlikeTerms } from "../../../domain/proposals/alike/find-alike-terms.ts";
import { broaderTerms } from "../../../domain/region.ts";
import type { Source } from "../../../domain/source.ts";
import { standingSources } from "../../../domain/sources-in/find-standing.ts";
import type { Term } from "../../../domain/term.ts";
import { type ClaimFilter, LARGEST_PAGE, type Store } from "../../../ports/store.ts";
import { everySource } from "./every-source.ts";

/** Most that are told of one thing. */
const MOST_ALIKE = 8;
const TERMS_LOOKED_AT = 30;

/** What stands that may be what the new things of a change are. */
export async function findAlike(store: Store, change: Change): Promise<readonly Alike[]> {
  const found: Alike[] = [];
  const added = change.filter(({ before }) => before === undefined);
  const sources = added.flatMap((edit) => (edit.kind === "source" && edit.after ? [edit.after] : []));
  for (const edit of added) {
    if (edit.kind === "claim") found.push(...(await alikeClaims(store, edit.after as unknown as Draft)));
    if (edit.kind === "term" && edit.after) found.push(...(await alikeTerms(store, edit.after)));
  }
  return [...found, ...(await alikeSources(store, sources))];
}

/** Claims that may be what a draft says, which may lack anything. */
export async function alikeClaims(store: Store, draft: Draft): Promise<readonly Alike[]> {
  const { relation, subject, of, citations } = draft;
  const cited = (listOf(citations) ?? []).flatMap((one) =>
    isDraft(one) && isId(one["source"]) ? [one["source"]] : [],
  );
  const filters: readonly ClaimFilter[] = [
    ...(isId(subject) ? [{ subject: id<"term">(subject), relations: [relation as Relation] }] : []),
    ...(isId(of) ? [{ of: [id<"claim">(of)] }] : []),
    ...cited.slice(0, 3).map((source) => ({ source: id<"source">(source) })),
  ];
  const pages = await Promise.all(filters.map((filter) => store.listClaims(filter, { first: LARGEST_PAGE })));
  const standing = [...new Map(pages.flatMap(({ rows }) => rows.map((row) => [row.id, row]))).values()];
  const scope = draft["scope"];
  const regions = [isDraft(scope) ? scope["region"] : undefined, ...standing.map(regionOf)];
  const seeds = [...new Set(regions.filter(isId))].map((region): TermId => id(region));
  const { terms } = await store.neighbourhood({ seeds, regions: [], maxDepth: 0 });
  return findAlikeClaims(draft, standing, broaderTerms(terms)).slice(0, MOST_ALIKE);
}

const regionOf = (claim: Claim): TermId | undefined => ("scope" in claim ? claim.scope.region : undefined);

/** Terms that share a label with one. */
export async function alikeTerms(
  store: Store,
  term: Pick<Term, "label"> & Partial<Pick<Term, "id" | "otherLabels">>,
): Promise<readonly Alike[]> {
  const hits = await Promise.all(
    [term.label, ...(term.otherLabels ?? [])]
      .slice(0, 5)
      .map((label) => store.search(label, {}, TERMS_LOOKED_AT)),
  );
  const terms = await store.terms([...new Set(hits.flat().map((hit) => hit.term))]);
  return findAlikeTerms(term, [...terms.values()]).slice(0, MOST_ALIKE);
}

async function alikeSources(store: Store, sources: readonly Source[]): Promise<readonly Alike[]> {
  if (sources.length === 0) return [];
  const standing = standingSources((await everySource(store)).map(({ id, csl }) => ({ ...csl, id })));
  return sources.flatMap((source): readonly Alike[] => {
    const found = standing.find(source.csl, "");
    return found === undefined ? [] : [{ kind: "source", id: found.id, by: "same source" }];
  });
}
