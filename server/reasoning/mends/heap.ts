/** Takes out the least first; of equals the one that was put in first. */
export class Heap<Entry> {
  readonly #entries: { readonly rank: number; readonly at: number; readonly entry: Entry }[] = [];
  #count = 0;

  get size(): number {
    return this.#entries.length;
  }

  /** Rank of the least. */
  get least(): number {
    return this.#entries[0]?.rank ?? Number.POSITIVE_INFINITY;
  }

  put(rank: number, entry: Entry): void {
    const entries = this.#entries;
    let at = entries.length;
    entries.push({ rank, at: this.#count++, entry });
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.#isBefore(at, above)) return;
      this.#swap(at, above);
      at = above;
    }
  }

  take(): Entry | undefined {
    const entries = this.#entries;
    const top = entries[0];
    const last = entries.pop();
    if (top === undefined || last === undefined || entries.length === 0) return top?.entry;
    entries[0] = last;
    for (let at = 0; ; ) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      let first = at;
      if (left < entries.length && this.#isBefore(left, first)) first = left;
      if (right < entries.length && this.#isBefore(right, first)) first = right;
      if (first === at) return top.entry;
      this.#swap(at, first);
      at = first;
    }
  }

  #isBefore(i: number, j: number): boolean {
    const [a, b] = [this.#entries[i], this.#entries[j]];
    if (a === undefined || b === undefined) return false;
    return a.rank < b.rank || (a.rank === b.rank && a.at < b.at);
  }

  #swap(i: number, j: number): void {
    const [a, b] = [this.#entries[i], this.#entries[j]];
    if (a === undefined || b === undefined) return;
    this.#entries[i] = b;
    this.#entries[j] = a;
  }
}
