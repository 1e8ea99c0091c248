import type { ComparedInWords, DifferenceInWords } from "../../../domain/edit-words.ts";
import type { LabelOf } from "../claim-in-words.ts";

/** Names as they stood on one side of an edit. */
export interface NamesThen {
  readonly labelOf: LabelOf;
  /** A source as a line of text. */
  readonly citeOf: (source: string) => string;
}

/** One thing that can be said of a term, claim or source. Two sides differ where a key stands on one of them only. */
export interface Facet {
  readonly what: string;
  readonly key: string;
  readonly text: string;
  /** Facets of one `what` and one `pair` are told as one that changed. */
  readonly pair: string;
}

/** What there can be one of. */
export const one = (what: string, key: string, text = key): readonly Facet[] => [
  { what, key, text, pair: "" },
];

/** What there can be several of. Without a pair, one that came is not told as one that went and was changed. */
export const each = <Value>(
  what: string,
  values: readonly Value[],
  facet: (value: Value) => { readonly key: string; readonly text?: string; readonly pair?: string },
): readonly Facet[] =>
  values.map((value) => {
    const { key, text = key, pair = key } = facet(value);
    return { what, key, text, pair };
  });

type KeysOf<Thing> = Thing extends unknown ? keyof Thing : never;
type ValueOf<Thing, Key> = Thing extends unknown
  ? Key extends keyof Thing
    ? Exclude<Thing[Key], undefined>
    : never
  : never;

/** For every field that a thing can have, what it says: a field that is forgotten does not compile. */
export type FacetTable<Thing> = {
  readonly [Key in Exclude<KeysOf<Thing>, "id">]-?: (
    value: ValueOf<Thing, Key>,
    names: NamesThen,
    thing: Thing,
  ) => readonly Facet[];
};

/** A facet with the place of its field in the table. */
export interface PlacedFacet extends Facet {
  readonly at: number;
}

/** All that a thing says, in the order of the table. */
export function facetsOf<Thing extends object>(
  thing: Thing,
  table: FacetTable<Thing>,
  names: NamesThen,
): readonly PlacedFacet[] {
  type Say = (value: unknown, names: NamesThen, thing: Thing) => readonly Facet[];
  return Object.entries(table as unknown as Readonly<Record<string, Say>>).flatMap(([field, say], at) => {
    const value: unknown = thing[field as keyof Thing];
    return value === undefined ? [] : say(value, names, thing).map((facet) => ({ ...facet, at }));
  });
}

/** All that two sides say, in the order of the table; what goes together is told once. */
export function compareFacets(
  before: readonly PlacedFacet[],
  after: readonly PlacedFacet[],
): readonly ComparedInWords[] {
  const isAlike = (one: PlacedFacet) => (other: PlacedFacet) =>
    one.what === other.what && one.key === other.key;
  const came = after.filter((facet) => !before.some(isAlike(facet)));
  const told = before.map((facet) => {
    const { what, pair, text, at: place } = facet;
    const same = after.find(isAlike(facet));
    if (same) return { place, what, before: text, after: same.text, differs: false };
    const at = came.findIndex((other) => other.what === what && other.pair === pair);
    const [partner] = at === -1 ? [] : came.splice(at, 1);
    return {
      ...{ place, what, before: text, differs: true },
      ...(partner === undefined ? {} : { after: partner.text }),
    };
  });
  return [...told, ...came.map(({ what, text, at: place }) => ({ place, what, after: text, differs: true }))]
    .sort((a, b) => a.place - b.place)
    .map(({ place: _, ...compared }): ComparedInWords => compared);
}

/** What stands on one side only, in the order of the table; what goes together is told once. */
export const differencesOf = (
  before: readonly PlacedFacet[],
  after: readonly PlacedFacet[],
): readonly DifferenceInWords[] =>
  compareFacets(before, after)
    .filter(({ differs }) => differs)
    .map(({ differs: _, ...difference }) => difference);
