import { closeSync, openSync, writeSync } from "node:fs";

/** Rows of one kind of node or relationship, as the bulk import of Neo4j reads them. */
export interface BulkFile {
  /** Adds a row: its numbers (of a node, or of the two that a relationship joins), then all properties of some objects. Gives the place of the first property in the file. */
  put(numbers: readonly number[], ...parts: readonly object[]): number;
  /** Writes over as many bytes at a place. */
  patch(place: number, text: string): void;
  /** What the columns after the numbers are, in their order. */
  columns(): readonly string[];
  readonly rows: number;
  /** Bytes of the longest row. */
  readonly longest: number;
  /** Whether a text holds a line feed. */
  readonly hasLineFeeds: boolean;
  close(): void;
}

/** The sign between two fields and the one around a text that needs it. Canonical JSON and ids hold neither. */
export const BETWEEN = "\t";
export const AROUND = "\u0001";

/** Bytes kept until they are written. */
const AT_ONCE = 1 << 20;
// biome-ignore lint/suspicious/noControlCharactersInRegex: signs that mean something to the reader of the file
const NEEDS_SIGNS = /[\t\n\r\u0001]/;
const LINE_FEEDS = /[\n\r]/;

/**
 * Begins a file. A property gets its column, and the type of that, when it first comes by: rows before it are shorter, which
 * the reader takes for nothing, and the header stands in a file of its own.
 */
export function openBulkFile(path: string): BulkFile {
  const file = openSync(path, "wx", 0o600);
  const buffer = Buffer.allocUnsafe(AT_ONCE);
  const columns = new Map<string, { readonly at: number; readonly type: string }>();
  let [written, held, rows, longest, hasLineFeeds] = [0, 0, 0, 0, false];

  const flush = (): void => {
    for (let at = 0; at < held; ) at += writeSync(file, buffer, at, held - at);
    written += held;
    held = 0;
  };
  const add = (text: string): number => {
    const most = text.length * 3;
    if (held + most > AT_ONCE) flush();
    if (most <= AT_ONCE) {
      const bytes = buffer.write(text, held);
      held += bytes;
      return bytes;
    }
    const bytes = Buffer.from(text);
    for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at);
    written += bytes.length;
    return bytes.length;
  };
  const columnOf = (name: string, value: unknown): number => {
    const type = typeOf(value);
    const column = columns.get(name) ?? { at: columns.size, type };
    if (column.type !== type) throw new TypeError(`${name} is a ${type} here and a ${column.type} elsewhere`);
    columns.set(name, column);
    return column.at;
  };
  const fieldOf = (value: unknown): string => {
    if (typeof value !== "string") return value instanceof Int8Array ? value.join(";") : String(value);
    if (value !== "" && !NEEDS_SIGNS.test(value)) return value;
    hasLineFeeds ||= LINE_FEEDS.test(value);
    return `${AROUND}${value.replaceAll(AROUND, AROUND + AROUND)}${AROUND}`;
  };

  return {
    put: (numbers, ...parts) => {
      const fields: string[] = [];
      for (const part of parts)
        for (const name in part) {
          const value = (part as Readonly<Record<string, unknown>>)[name];
          if (value !== undefined) fields[columnOf(name, value)] = fieldOf(value);
        }
      const start = numbers.join(BETWEEN);
      const place = written + held + start.length + BETWEEN.length;
      const rest = fields.length === 0 ? "" : BETWEEN + fields.join(BETWEEN);
      longest = Math.max(longest, add(`${start}${rest}\n`));
      rows++;
      return place;
    },
    patch: (place, text) => {
      if (place < written) writeSync(file, text, place);
      else buffer.write(text, place - written);
    },
    columns: () => [...columns].map(([name, { type }]) => `${name}:${type}`),
    get rows() {
      return rows;
    },
    get longest() {
      return longest;
    },
    get hasLineFeeds() {
      return hasLineFeeds;
    },
    close: () => {
      flush();
      closeSync(file);
    },
  };
}

/** As the driver hands these values over: whole numbers, truths, texts, bytes. */
function typeOf(value: unknown): string {
  if (typeof value === "string" || typeof value === "boolean") return typeof value;
  if (Number.isSafeInteger(value)) return "long";
  if (value instanceof Int8Array) return "byte[]";
  throw new TypeError(`No column holds ${String(value)}`);
}
