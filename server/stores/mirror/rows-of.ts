import type { IdTable } from "./id-table.ts";
import { boundsOf, hasExceptions, NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** All that the arrays say, a line each, sorted: arrays that say the same give the same, however they were made. */
export function rowsOf(arrays: WalkArrays): readonly string[] {
  const { terms, claims, stands, broader, statements, leads, exceptions } = arrays;
  const idIn = (table: IdTable, number: number | undefined): string =>
    number !== undefined && number >= 0 && number < table.size ? table.idOf(number) : `no number (${number})`;
  const termOf = (number: number | undefined): string => (number === NO_TERM ? "" : idIn(terms, number));
  const claimOf = (number: number | undefined): string => idIn(claims, number);
  const rows: string[] = [];
  for (let term = 0; term < terms.size; term++) {
    const id = terms.idOf(term);
    if (stands[term] !== 0) rows.push(`${id} is below ${termOf(broader[term] as number)}`);
    const [first, end] = boundsOf(arrays, statements, term);
    for (let place = first; place < end; place++) rows.push(`${id} has ${claimOf(statements.rows[place])}`);
    const [from, to] = boundsOf(arrays, leads, term);
    for (let place = from; place < to; place++)
      rows.push(`${id} leads to ${termOf(leads.rows[place * 2])} in ${termOf(leads.rows[place * 2 + 1])}`);
  }
  for (let claim = 0; claim < claims.size; claim++) {
    if (!hasExceptions(exceptions, claim)) continue;
    let next = exceptions.first[claim] as number;
    for (let many = 0; next >= 0 && many < claims.size; many++) {
      rows.push(`${claims.idOf(claim)} is void by ${claimOf(next)}`);
      next = exceptions.next[next] as number;
    }
  }
  return rows.sort();
}
