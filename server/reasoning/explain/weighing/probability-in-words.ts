/** A probability with two figures at most: "0.83", "0.05", "under 0.01", "over 0.99". */
export function probabilityInWords(p: number): string {
  if (p < 0.01) return "under 0.01";
  if (p > 0.99) return "over 0.99";
  return p.toFixed(2);
}

/** "0.15 to 0.49", or one number where both ends read alike. */
export function rangeInWords([least, greatest]: readonly [number, number]): string {
  const [a, b] = [probabilityInWords(least), probabilityInWords(greatest)];
  return a === b ? a : `${a} to ${b}`;
}

/** How a person says how likely something is. */
export function likelyInWords(p: number): string {
  if (p >= 0.95) return "very probably";
  if (p >= 0.75) return "probably";
  if (p >= 0.5) return "more likely than not";
  return "possibly";
}
