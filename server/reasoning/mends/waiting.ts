import type { Found } from "./cheapest.ts";
import { both, type Item, type Items } from "./items.ts";
import type { Listing } from "./listing.ts";

/** Sets listed on the graph without what is given up already. */
interface Source {
  readonly given: readonly Item[];
  readonly listing: Listing;
  next: Found | undefined;
}

/** Sets still to be looked at, of several listings together, the cheapest first. */
export class Waiting {
  readonly #items: Items;
  readonly #sources: Source[] = [];
  readonly #opened = new Set<string>();

  constructor(items: Items) {
    this.#items = items;
  }

  get isEmpty(): boolean {
    return this.#sources.length === 0;
  }

  /** Adds what can be listed once some things are given up; each of these once. */
  open(given: readonly Item[], list: () => Listing): void {
    const key = given.join(" ");
    if (this.#opened.has(key)) return;
    this.#opened.add(key);
    this.#sources.push({ given, listing: list(), next: undefined });
  }

  /** The next set, if there is one that costs no more than `most` and nothing cheaper can have been passed over. */
  take(most: number): readonly Item[] | undefined {
    let best: Source | undefined;
    for (const source of this.#sources) {
      source.next ??= source.listing.next(most - this.#items.costOf(source.given));
      if (source.next !== undefined && (best === undefined || this.#leastOf(source) < this.#leastOf(best)))
        best = source;
    }
    if (best?.next === undefined || this.#leastOf(best) > Math.min(most, this.atLeast() + 0.5))
      return undefined;
    const set = both(best.given, best.next.items);
    best.next = undefined;
    return set;
  }

  /** Nothing that is still to come costs less; infinite at the end. */
  atLeast(): number {
    return this.#sources.reduce(
      (least, source) => Math.min(least, this.#leastOf(source)),
      Number.POSITIVE_INFINITY,
    );
  }

  #leastOf({ given, listing, next }: Source): number {
    return this.#items.costOf(given) + (next?.cost ?? Math.max(0, listing.atLeast()));
  }
}
