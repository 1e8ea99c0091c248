import type { Refusal } from "../sources-in/read-item.ts";
import { createScanner, type Scanner } from "./scanner.ts";

/** A part of a value: as it stands between braces or quotation marks, a number, or the name of an abbreviation. */
export interface ValuePiece {
  readonly kind: "text" | "name";
  readonly text: string;
}
export interface RawField {
  /** In small letters. */
  readonly name: string;
  readonly line: number;
  readonly pieces: readonly ValuePiece[];
}
/** An entry as it is written, or what is left of it where it is broken. */
export interface RawEntry {
  /** In small letters; `string` for a definition of abbreviations. */
  readonly type: string;
  readonly key: string;
  readonly line: number;
  readonly fields: readonly RawField[];
  /** Why it cannot be read; its fields are not all of them then. */
  readonly refusals: readonly Refusal[];
}

/** Where an entry can begin: a line of its own, or behind something that is no letter. */
const BEGINNING = /(?<![\w.@+-])@[ \t]*([A-Za-z][\w-]*)\s*([{(])?/g;

/**
 * Cuts a text into the entries of a BibTeX file, in order, as O. Patashnik, BibTeXing (1988), describes them; what
 * stands between entries is comment. A broken entry keeps its place with what is wrong, and reading goes on at the next
 * line that begins an entry, so that nothing is lost to it.
 */
export function splitEntries(text: string): readonly RawEntry[] {
  const scanner = createScanner(text);
  const entries: RawEntry[] = [];
  for (let next = findBeginning(text, scanner); next !== undefined; next = findBeginning(text, scanner)) {
    const { type, isOpened, index, end, close } = next;
    scanner.goTo(end);
    if (type === "comment" || type === "preamble") {
      if (isOpened && !scanner.skipComment(close)) scanner.goTo(end);
      continue;
    }
    const entry = readEntry(scanner, next);
    if (entry.refusals.length > 0 && isOpened) scanner.goTo(findLineOfEntry(text, index + 1));
    entries.push(entry);
  }
  return entries;
}

const LINE_START = /[ \t]*(%)?/y;

interface Beginning {
  readonly type: string;
  readonly isOpened: boolean;
  readonly index: number;
  readonly end: number;
  readonly close: string;
}

function findBeginning(text: string, scanner: Scanner): Beginning | undefined {
  BEGINNING.lastIndex = scanner.at();
  for (let found = BEGINNING.exec(text); found !== null; found = BEGINNING.exec(text)) {
    const { index } = found;
    LINE_START.lastIndex = scanner.lineStartOf(index);
    const [blank = "", comment] = LINE_START.exec(text) ?? [];
    const isFirstInLine = scanner.lineStartOf(index) + blank.length === index;
    const [all, type = "", open] = found;
    // Without a brace it is an entry only where nothing else stands before it in its line.
    if (comment !== undefined || (open === undefined && !isFirstInLine)) continue;
    const close = open === "(" ? ")" : "}";
    return { type: type.toLowerCase(), isOpened: open !== undefined, index, end: index + all.length, close };
  }
  return undefined;
}

/** The next place that looks like the beginning of an entry; the end of the text if there is none. */
function findLineOfEntry(text: string, from: number): number {
  const line = /^[ \t]*@[ \t]*[A-Za-z][\w-]*[ \t]*[{(]/gm;
  line.lastIndex = from;
  return line.exec(text)?.index ?? text.length;
}

function readEntry(scanner: Scanner, { type, isOpened, index, close }: Beginning): RawEntry {
  const line = scanner.lineOf(index);
  const fields: RawField[] = [];
  const refuse = (
    why: string,
    remedy: string,
    field?: RawField | { name: string; line: number },
  ): RawEntry => ({
    ...{ type, key, line, fields },
    refusals: [{ line: field?.line ?? line, ...(field ? { field: field.name } : {}), why, remedy }],
  });
  let key = "";
  if (!isOpened) return refuse(`No brace follows @${type}.`, `Write @${type}{key, and close it with }.`);
  scanner.skipSpace();
  if (type !== "string") {
    key = scanner.take(/[^\s,={}()"#%]*(?:\([^\s,={}()]*\))?/y);
    scanner.skipSpace();
    if (key === "" || scanner.is("="))
      return refuse("It has no key.", `Write a key and a comma behind @${type}{.`);
    if (!scanner.is(",") && !scanner.is(close))
      return refuse(`No comma follows the key ${key}.`, "Put a comma behind the key, and no space into it.");
  }
  for (;;) {
    scanner.skipCommas();
    if (scanner.isAtEnd())
      return refuse(
        "The text ends inside this entry.",
        `Close it with ${close}, or copy the rest of it too.`,
      );
    if (scanner.is(close)) break;
    const field = { name: "", line: scanner.line() };
    field.name = scanner.take(/[A-Za-z][^\s={}(),"#%']*/y).toLowerCase();
    if (field.name === "")
      return refuse(
        `Where a field should begin stands “${scanner.sign()}”, in line ${field.line}.`,
        "Check the braces and commas before it.",
        fields.at(-1),
      );
    scanner.skipSpace();
    if (!scanner.is("=")) return refuse("No = follows its name.", "Write name = {value}.", field);
    scanner.step();
    const pieces = readValue(scanner);
    if (typeof pieces === "string") return refuse(pieces, VALUE_REMEDY, field);
    fields.push({ ...field, pieces });
    scanner.skipSpace();
    if (scanner.isAtEnd() || scanner.is(",") || scanner.is(close)) continue;
    return refuse(
      `Behind its value stands “${scanner.sign()}”, in line ${scanner.line()}.`,
      "Put a comma behind the value, and check that its braces and those of the entry close.",
      field,
    );
  }
  scanner.step();
  // What looks like the rest of an entry means that a brace closed it too early.
  if (type !== "string" && /^\s*,?\s*(?:\}|[A-Za-z][\w-]*\s*=)/.test(scanner.rest(200)))
    return refuse(
      `It is closed in line ${scanner.line()}, but goes on behind that.`,
      "Take away a closing brace too many.",
      fields.at(-1),
    );
  return { type, key, line, fields, refusals: [] };
}

const VALUE_REMEDY = "Put the value between braces that close, or between quotation marks.";

/** The parts of a value that `#` joins; why not, if it cannot be read. */
function readValue(scanner: Scanner): readonly ValuePiece[] | string {
  const pieces: ValuePiece[] = [];
  for (;;) {
    scanner.skipSpace();
    const line = scanner.line();
    if (scanner.is("{") || scanner.is('"')) {
      const text = scanner.takeDelimited();
      if (text === undefined) return `What opens in line ${line} never closes.`;
      pieces.push({ kind: "text", text });
    } else {
      const word = scanner.take(/[^\s{}(),="#%']+/y);
      if (word === "") return "It has no value.";
      pieces.push({ kind: /^\d+$/.test(word) ? "text" : "name", text: word });
    }
    scanner.skipSpace();
    if (!scanner.is("#")) return pieces;
    scanner.step();
  }
}
