/** Lets through so many a second on average, and as many at once; false for what is too much. */
export function limitRate(aSecond: number, now: () => number): () => boolean {
  let left = aSecond;
  let since = now();
  return () => {
    const at = now();
    left = Math.min(aSecond, left + ((at - since) / 1000) * aSecond);
    since = at;
    if (left < 1) return false;
    left--;
    return true;
  };
}
