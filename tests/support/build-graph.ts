import type { Edit, Graph } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Source } from "#server/domain/source.ts";
import type { Term } from "#server/domain/term.ts";

const byId = <Thing extends { readonly id: string }>(things: readonly Thing[]): ReadonlyMap<string, Thing> =>
  new Map(things.map((thing) => [thing.id, thing]));

/** A graph of these things. */
export const aGraph = (
  terms: readonly Term[],
  claims: readonly Claim[] = [],
  sources: readonly Source[] = [],
): Graph => ({ terms: byId(terms), claims: byId(claims), sources: byId(sources) });

/** A book with its id for a title. */
export const aSource = (id: string, rest: Partial<Source> = {}): Source =>
  ({ id, kind: "book", csl: { id, type: "book", title: id }, reading: "read", ...rest }) as Source;

export const put = (kind: Edit["kind"], after: object): Edit => ({ kind, after }) as unknown as Edit;
export const drop = (kind: Edit["kind"], before: object): Edit => ({ kind, before }) as unknown as Edit;
export const alter = (kind: Edit["kind"], before: object, after: object): Edit =>
  ({ kind, before, after }) as unknown as Edit;
