interface Row {
  readonly table: string;
  readonly quantity: string;
  readonly unit: string | null;
}

/** Rows of one quantity and unit: more than one where sources or places differ. */
export interface RowGroup<Of> {
  readonly quantity: string;
  readonly rows: readonly Of[];
}
export interface TableGroup<Of> {
  /** Name of the table in words: “drawer parts”. */
  readonly name: string;
  readonly quantities: readonly RowGroup<Of>[];
}

/** Rows by table, and in each by what was measured in which unit; both in the order of the first row. */
export const groupRows = <Of extends Row>(rows: readonly Of[]): readonly TableGroup<Of>[] =>
  [...Map.groupBy(rows, ({ table }) => table)].map(([table, ofTable]) => ({
    name: table.replaceAll("-", " "),
    quantities: [...Map.groupBy(ofTable, ({ quantity, unit }) => `${quantity}|${unit ?? ""}`).values()].map(
      (same) => ({ quantity: same[0]?.quantity ?? "", rows: same }),
    ),
  }));
