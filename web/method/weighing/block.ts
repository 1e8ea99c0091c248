/** A table of the method: what stands in its columns, row by row. */
export interface Table {
  /** Says what the table is, for those who hear it. */
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A piece of the text on the method. */
export type Block =
  | string
  | { readonly formula: readonly string[] }
  | { readonly list: readonly string[] }
  | { readonly table: Table };

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}
