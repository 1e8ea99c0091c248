/** A table of texts: `# key: value` lines first, then a line of column names, then the rows. */
export interface Table {
  readonly about: Readonly<Record<string, string>>;
  readonly rows: readonly Readonly<Record<string, string>>[];
}

/** Reads comma-separated text (RFC 4180, quotes doubled). A row with more or fewer cells than there are columns is a defect of the file. */
export function parseCsv(text: string, file: string): Table {
  const lines = text.split("\n").filter((line) => line !== "");
  const head = lines.filter((line) => line.startsWith("#"));
  const about = head.map((line) => {
    const [, key = "", value = ""] = /^# ([a-z]+): (.+)$/.exec(line) ?? [];
    if (key === "") throw new Error(`${file}: the line “${line}” is not “# key: value”`);
    return [key, value] as const;
  });
  const [columns = [], ...rows] = lines.slice(head.length).map(cellsOf);
  return {
    about: Object.fromEntries(about),
    rows: rows.map((cells) => {
      if (cells.length !== columns.length)
        throw new Error(`${file}: the row “${cells.join(",")}” has not ${columns.length} cells`);
      return Object.fromEntries(columns.map((column, i) => [column, cells[i] ?? ""]));
    }),
  };
}

function cellsOf(line: string): readonly string[] {
  return [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,"]*))/g)].map(
    ([, quoted, plain = ""]) => quoted?.replaceAll('""', '"') ?? plain,
  );
}
