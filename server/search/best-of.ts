/**
 * The first of these places by an order, sorted. As many are compared as there are, and few are moved: the rest is never
 * sorted.
 */
export function bestOf(
  places: Iterable<number>,
  compare: (a: number, b: number) => number,
  first: number,
): readonly number[] {
  const best: number[] = [];
  for (const place of places) {
    if (best.length === first && compare(place, best[first - 1] as number) >= 0) continue;
    let [low, high] = [0, best.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (compare(best[middle] as number, place) <= 0) low = middle + 1;
      else high = middle;
    }
    best.splice(low, 0, place);
    if (best.length > first) best.pop();
  }
  return best;
}
