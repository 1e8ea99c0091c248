import type { DraftItem } from "./read-item.ts";

/** Reads a text as CSL-JSON, one item or a list; why not, if it is no such list: the sentence says what to do. */
export function readCsl(text: string): readonly DraftItem[] | string {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return `This is not whole JSON${placeOf(error)}; export the list as CSL-JSON and take the whole of it, brackets included.`;
  }
  if (!Array.isArray(json)) return [draftOf(json, lineOfFirst(text))];
  if (json.length === 0) return "The list is empty; put at least one item in it.";
  const lines = linesOfItems(text);
  return json.map((item: unknown, index) => draftOf(item, lines[index] ?? 1));
}

function draftOf(item: unknown, line: number): DraftItem {
  const { id } = (item ?? {}) as { id?: unknown };
  return { line, key: typeof id === "string" || typeof id === "number" ? `${id}` : "", draft: item };
}

/** Where the reader of the browser or of Node stopped, as far as it tells. */
function placeOf(error: unknown): string {
  const [, line] = /\bline (\d+)/.exec(error instanceof Error ? error.message : "") ?? [];
  return line === undefined ? "" : ` (it breaks off in line ${line})`;
}

const lineOfFirst = (text: string): number => (text.match(/^\s*/)?.[0] ?? "").split("\n").length;

/** Lines, from 1, on which the items of a list begin. The text is known to be JSON. */
function linesOfItems(text: string): readonly number[] {
  const lines: number[] = [];
  let line = 1;
  let depth = 0;
  let isBetween = false;
  for (const [sign] of text.matchAll(/"(?:[^"\\]|\\.)*"|[^\s"]|\n/g)) {
    if (sign === "\n") {
      line += 1;
      continue;
    }
    if (depth === 1 && sign === ",") isBetween = true;
    else if (isBetween && sign !== "]") {
      lines.push(line);
      isBetween = false;
    }
    if (sign === "[" || sign === "{") depth += 1;
    if (sign === "]" || sign === "}") depth -= 1;
    if (depth === 1 && sign === "[" && lines.length === 0) isBetween = true;
  }
  return lines;
}
