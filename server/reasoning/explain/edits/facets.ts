import type { DifferenceInWords } from "../../../domain/edit-words.ts";
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

/** All that a thing says, in the order of the table. */
export function facetsOf<Thing extends object>(
  thing: Thing,
  table: FacetTable<Thing>,
  names: NamesThen,
): readonly Facet[] {
  type Say = (value: unknown, names: NamesThen, thing: Thing) => readonly Facet[];
  return Object.entries(table as unknown as Readonly<Record<string, Say>>).flatMap(([field, say]) => {
    const value: unknown = thing[field as keyof Thing];
    return value === undefined ? [] : say(value, names, thing);
  });
}

/** What stands on one side only, in the order of the sides; what goes together is told once. */
export function differencesOf(
  before: readonly Facet[],
  after: readonly Facet[],
): readonly DifferenceInWords[] {
  const alone = (facets: readonly Facet[], others: readonly Facet[]) =>
    facets.filter(({ what, key }) => !others.some((other) => other.what === what && other.key === key));
  const came = [...alone(after, before)];
  const told = alone(before, after).map(({ what, pair, text }): DifferenceInWords => {
    const at = came.findIndex((facet) => facet.what === what && facet.pair === pair);
    const [partner] = at === -1 ? [] : came.splice(at, 1);
    return { what, before: text, ...(partner === undefined ? {} : { after: partner.text }) };
  });
  const differences = [...told, ...came.map(({ what, text }) => ({ what, after: text }))];
  const order = [...before, ...after].map(({ what }) => what);
  return differences.sort((a, b) => order.indexOf(a.what) - order.indexOf(b.what));
}
