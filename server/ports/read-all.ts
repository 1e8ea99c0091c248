import { LARGEST_PAGE, type Page, type PageAsk } from "./store.ts";

/** The rows of all pages of a list. */
export async function readAll<Row>(list: (page: PageAsk) => Promise<Page<Row>>): Promise<readonly Row[]> {
  const rows: Row[] = [];
  let after: string | undefined;
  do {
    const page = await list({ first: LARGEST_PAGE, ...(after === undefined ? {} : { after }) });
    rows.push(...page.rows);
    after = page.hasMore ? page.cursors.at(-1) : undefined;
  } while (after !== undefined);
  return rows;
}
