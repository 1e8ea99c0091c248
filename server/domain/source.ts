import type { SourceId, TermId } from "./ids.ts";

/** A bibliographic item as CSL-JSON (citation-style-language schema); only the fields we read are named. */
export interface CslItem {
  readonly id: string;
  readonly type: string;
  readonly title?: string;
  readonly author?: readonly CslName[];
  readonly editor?: readonly CslName[];
  readonly issued?: { readonly "date-parts"?: readonly (readonly number[])[]; readonly raw?: string };
  readonly publisher?: string;
  readonly "publisher-place"?: string;
  readonly "container-title"?: string;
  readonly volume?: string;
  readonly issue?: string;
  readonly page?: string;
  readonly number?: string;
  readonly URL?: string;
  readonly note?: string;
  readonly [field: string]: unknown;
}
export interface CslName {
  readonly family?: string;
  readonly given?: string;
  readonly literal?: string;
  /** "van der" before the family name, kept with it in no order. */
  readonly "dropping-particle"?: string;
  /** The same, kept with it in all orders. */
  readonly "non-dropping-particle"?: string;
  /** "Jr." behind the family name. */
  readonly suffix?: string;
}

/** How far the source itself was read when its claims were taken from it. */
export type Reading = "read" | "opening" | "secondary" | "known";

/** What kind of witness a source is. */
export const SOURCE_KINDS = [
  "book",
  "article",
  "thesis",
  "patent",
  "statute",
  "standard",
  "museum text",
  "trade text",
  "web page",
  "documented piece",
] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

/** What a documented piece (signed, dated or billed) shows: its features count for its region and decade. */
export interface DocumentedPiece {
  readonly form: TermId;
  readonly region: TermId;
  /** EDTF, read as an event. */
  readonly made: string;
  readonly features: readonly { readonly feature: TermId; readonly part?: TermId }[];
}

/** What a citation points to. */
export interface Source {
  readonly id: SourceId;
  readonly kind: SourceKind;
  readonly csl: CslItem;
  readonly reading: Reading;
  readonly note?: string;
  readonly piece?: DocumentedPiece;
}
