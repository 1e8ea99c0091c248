import type { DraftItem, Refusal } from "../sources-in/read-item.ts";
import { cslOfEntry, type Entry, type Field } from "./csl-of-entry.ts";
import { MONTH_NAMES } from "./read-bibtex-date.ts";
import { type RawEntry, type RawField, splitEntries } from "./split-entries.ts";

/** Reads a text as BibTeX, entry by entry. Empty if there is no entry in it. */
export function readBibtex(text: string): readonly DraftItem[] {
  const abbreviations = new Map(Object.entries(MONTH_NAMES));
  const read = splitEntries(text).flatMap((raw): ReadEntry[] => {
    const entry = joinFields(raw, abbreviations);
    if (raw.type !== "string") return [entry];
    for (const [name, { value }] of entry.fields) abbreviations.set(name, value);
    // A definition is shown only where something is wrong with it.
    return entry.refusals.length > 0 ? [{ ...entry, key: "@string" }] : [];
  });
  const byKey = new Map(read.map((entry) => [entry.key.toLowerCase(), entry]));
  return read.map((entry) => {
    const whole = withParent(entry, byKey);
    if (whole.refusals.length > 0)
      return { line: entry.line, key: entry.key, draft: titleOnly(entry), refusals: whole.refusals };
    return cslOfEntry(whole);
  });
}

interface ReadEntry extends Entry {
  readonly refusals: readonly Refusal[];
}

/** Values in one piece each; a broken entry keeps what was read of it. */
function joinFields(raw: RawEntry, abbreviations: ReadonlyMap<string, string>): ReadEntry {
  const fields = new Map<string, Field>();
  const refusals = [...raw.refusals];
  for (const field of raw.fields) {
    const { name, line } = field;
    const { value, unknown } = joinPieces(field, abbreviations);
    const first = fields.get(name);
    for (const word of unknown)
      refusals.push({
        ...{ line, field: name, why: `The abbreviation ${word} is not defined.` },
        remedy: `Put the words between braces, or define it before with @string{${word} = {...}}.`,
      });
    if (first !== undefined && first.value !== value)
      refusals.push({
        ...{ line, field: name, why: `It stands in line ${first.line} already, with another value.` },
        remedy: "Keep one of the two.",
      });
    if (first === undefined) fields.set(name, { value, line });
  }
  return { type: raw.type, key: raw.key, line: raw.line, fields, refusals };
}

function joinPieces(
  { pieces }: RawField,
  abbreviations: ReadonlyMap<string, string>,
): { value: string; unknown: readonly string[] } {
  const unknown = pieces.flatMap(({ kind, text }) =>
    kind === "name" && !abbreviations.has(text.toLowerCase()) ? [text] : [],
  );
  const value = pieces
    .map(({ kind, text }) => (kind === "name" ? (abbreviations.get(text.toLowerCase()) ?? "") : text))
    .join("");
  return { value, unknown };
}

/** Fields that a part has by itself, whatever the whole says of them. */
const OWN = new Set(["title", "subtitle", "author", "pages", "crossref", "doi", "url", "note", "abstract"]);

/** With what the entry named by `crossref` says of the whole: its title as that of the book. */
function withParent(entry: ReadEntry, byKey: ReadonlyMap<string, ReadEntry>): ReadEntry {
  const named = entry.fields.get("crossref");
  if (named === undefined) return entry;
  const parent = byKey.get(named.value.trim().toLowerCase());
  if (parent === undefined || parent === entry)
    return {
      ...entry,
      refusals: [
        ...entry.refusals,
        {
          ...{ line: named.line, field: "crossref", why: `No entry here is called ${named.value.trim()}.` },
          remedy: "Copy that entry too, or take crossref out.",
        },
      ],
    };
  const title = parent.fields.get("booktitle") ?? parent.fields.get("title");
  const given = [...parent.fields].filter(([name]) => !OWN.has(name));
  const fields = new Map([...(title ? [["booktitle", title] as const] : []), ...given, ...entry.fields]);
  return { ...entry, fields };
}

const titleOnly = ({ fields }: ReadEntry): unknown => {
  const title = fields.get("title")?.value;
  // A title that never closed goes on over the fields behind it.
  const [first = ""] = title?.trim().split("\n") ?? [];
  return title === undefined ? undefined : { title: first.replaceAll(/[{}]|,\s*$/g, "") };
};
