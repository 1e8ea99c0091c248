import type { DumpRecord } from "#server/domain/dump.ts";
import type { Page, PageAsk, Store } from "#server/ports/store.ts";

/** Everything a store holds. */
export async function dumpOf(store: Store): Promise<DumpRecord[]> {
  const records: DumpRecord[] = [];
  for await (const record of store.dump()) records.push(record);
  return records;
}

/** The rows of all pages of a list, asked for `first` at a time. */
export async function allRows<Row>(
  list: (page: PageAsk) => Promise<Page<Row>>,
  first: number,
): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (let after: string | undefined; ; ) {
    const page = await list({ first, ...(after === undefined ? {} : { after }) });
    rows.push(...page.rows);
    after = page.cursors.at(-1);
    if (!page.hasMore || after === undefined) return rows;
  }
}
