import { CsvError, parse } from "csv-parse/sync";
import { type Problem, problem } from "../domain/problem.ts";

/** One record: its number in the file, the head being 1, and its cells. */
export interface CsvRow {
  readonly row: number;
  readonly cells: readonly string[];
}
export interface CsvTable {
  readonly head: readonly string[];
  readonly rows: readonly CsvRow[];
}

/** Letters of a file, and of one record. */
export const MOST_LETTERS_OF_CSV = 100_000;
const MOST_LETTERS_OF_RECORD = 20_000;
const MOST_PROBLEMS = 20;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const NO_TEXT = /[\u0000-\u0008\u000e-\u001f\ufffe\uffff]/;

/**
 * Reads comma-separated values (RFC 4180): cells in double quotes may hold the separator, line ends and doubled quotes. Semicolons
 * and tabs separate as well, where the first line has more of them. Lines end in any way; a byte order mark is no text.
 */
export function readCsv(text: string): CsvTable | readonly Problem[] {
  if (text.length > MOST_LETTERS_OF_CSV)
    return [
      problem(
        "TOO_LARGE",
        `The file has ${text.length.toLocaleString("en")} characters, and at most ${MOST_LETTERS_OF_CSV.toLocaleString("en")} are read at once; divide it.`,
      ),
    ];
  if (NO_TEXT.test(text))
    return [problem("UNREADABLE_FILE", "This is not a text; save the table as CSV and choose that file.")];
  const records = recordsOf(text);
  if (!Array.isArray(records)) return [records as Problem];
  const [head, ...below] = records as readonly (readonly string[])[];
  if (head === undefined || head.every((cell) => cell.trim() === ""))
    return [problem("EMPTY_LIST", "The file is empty: its first line has to name the columns.")];
  const rows = below
    .map((cells, i) => ({ row: i + 2, cells }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const crooked = rows.filter(({ cells }) => cells.length !== head.length);
  return crooked.length > 0
    ? crooked
        .slice(0, MOST_PROBLEMS)
        .map(({ row, cells }) =>
          problem(
            "WRONG_FORMAT",
            `Row ${row} has ${cells.length} cells, and the head ${head.length}; put text that holds a separator in double quotes.`,
            [row],
          ),
        )
    : { head, rows };
}

type Records = readonly (readonly string[])[];

/** A quote inside a cell without quotes around it is a sign, such as that of inches; one that opens a cell has to close it. */
function recordsOf(text: string): Records | Problem {
  const strict = parsed(text, false);
  if (!(strict instanceof CsvError)) return strict;
  if (strict.code !== "INVALID_OPENING_QUOTE") return unreadable(strict.code, recordsBefore(strict) + 1);
  const relaxed = parsed(text, true);
  if (relaxed instanceof CsvError) return unreadable(relaxed.code, recordsBefore(relaxed) + 1);
  const unclosed = relaxed.findIndex((cells) => cells.some((cell) => cell.startsWith('"')));
  return unclosed < 0 ? relaxed : unreadable("CSV_INVALID_CLOSING_QUOTE", unclosed + 1);
}

function parsed(text: string, isRelaxed: boolean): Records | CsvError {
  try {
    return parse(text, {
      bom: true,
      delimiter: separatorOf(text),
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      relax_quotes: isRelaxed,
      max_record_size: MOST_LETTERS_OF_RECORD,
    }) as unknown as Records;
  } catch (error) {
    if (error instanceof CsvError) return error;
    throw error;
  }
}

const recordsBefore = (error: CsvError): number => Number((error as { records?: unknown }).records ?? 0);

const unreadable = (code: string, row: number): Problem =>
  problem("UNREADABLE_FILE", `Row ${row} cannot be read: ${WHY[code] ?? "its cells cannot be told apart"}.`, [
    row,
  ]);

const WHY: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED:
    "a double quote that opens a cell is never closed; close it, or double it where it is meant as a sign",
  CSV_INVALID_CLOSING_QUOTE: "text follows a closing double quote; double the quotes inside a cell",
  CSV_MAX_RECORD_SIZE: `it has more than ${MOST_LETTERS_OF_RECORD.toLocaleString("en")} characters; see whether a double quote is missing`,
};

/** What there is most of in the first line, outside quotes; a comma where there is nothing else. */
function separatorOf(text: string): string {
  const [first = ""] = text.replaceAll(/"[^"]*"/g, "").split(/[\r\n]/, 1);
  const count = (sign: string): number => first.split(sign).length - 1;
  return [",", ";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}
