/** Something that wants to stand at `y` and takes `high`. */
export interface Wanted {
  readonly id: string;
  readonly y: number;
  readonly high: number;
}

/**
 * Heights in one column, as near as can be to those wanted and in their order, with `gap` between two and nothing above
 * `top`: neighbours that would meet move together, half the way each (pool adjacent violators, least squares).
 */
export function pushApart(items: readonly Wanted[], gap: number, top: number): ReadonlyMap<string, number> {
  const sorted = [...items].sort((a, b) => a.y - b.y || (a.id < b.id ? -1 : 1));
  const offsets: number[] = [];
  sorted.reduce((offset, { high }, i) => {
    const before = i === 0 ? 0 : offset + (sorted[i - 1]?.high ?? 0) / 2 + gap + high / 2;
    offsets.push(before);
    return before;
  }, 0);
  const blocks: { sum: number; count: number }[] = [];
  for (const [i, { y }] of sorted.entries()) {
    blocks.push({ sum: y - (offsets[i] ?? 0), count: 1 });
    for (
      let last = blocks.at(-1), before = blocks.at(-2);
      last && before;
      last = blocks.at(-1), before = blocks.at(-2)
    ) {
      if (before.sum / before.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  }
  const shifts = blocks.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  const least = top + (sorted[0]?.high ?? 0) / 2;
  return new Map(sorted.map(({ id }, i) => [id, Math.max(shifts[i] ?? 0, least) + (offsets[i] ?? 0)]));
}
