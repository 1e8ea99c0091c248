import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { termKindWords } from "../shared/words/term-words.ts";

/** What a search is narrowed to, as it stands in the address. */
export interface SearchFilter {
  readonly kind?: TermKind;
  readonly part?: string;
  readonly region?: string;
  readonly from?: number;
  readonly to?: number;
}

export const isTermKind = (text: string | null): text is TermKind => text !== null && text in termKindWords;

/** A year as it is typed: three or four figures. */
export const isYear = (text: string): boolean => /^\d{3,4}$/.test(text);

/** Reads the filter of an address; what cannot be read is left out. */
export function filterOfAddress(params: URLSearchParams): SearchFilter {
  const text = (name: string) => params.get(name)?.trim() || undefined;
  const year = (name: string) => (isYear(text(name) ?? "") ? Number(text(name)) : undefined);
  const kind = params.get("kind");
  const found = {
    kind: isTermKind(kind) ? kind : undefined,
    part: text("part"),
    region: text("region"),
    from: year("from"),
    to: year("to"),
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
}

/** Narrowed by more than a kind, so that a search without words finds something. */
export const isNarrowed = ({ part, region, from, to }: SearchFilter): boolean =>
  part !== undefined || region !== undefined || from !== undefined || to !== undefined;
