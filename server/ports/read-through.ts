/** All rows that come in slices. */
export async function readThrough<Row>(slices: AsyncIterable<readonly Row[]>): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for await (const slice of slices) for (const row of slice) rows.push(row);
  return rows;
}
