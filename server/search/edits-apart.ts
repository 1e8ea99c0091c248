/** Fewest letters to change, leave out or add to make one word of another (Levenshtein); none if more than `most`. */
export function editsApart(a: string, b: string, most: number): number | undefined {
  let before = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const other = Number(a.charCodeAt(i - 1) !== b.charCodeAt(j - 1));
      const cost = Math.min(
        (before[j] as number) + 1,
        (row[j - 1] as number) + 1,
        (before[j - 1] as number) + other,
      );
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return undefined;
    before = row;
  }
  const apart = before[b.length] as number;
  return apart > most ? undefined : apart;
}
