import type { CslName } from "../source.ts";
import type { DraftItem, Refusal } from "../sources-in/read-item.ts";
import { CSL_TYPES, SUBTYPES, THESES } from "./entry-types.ts";
import { readBibtexDate } from "./read-bibtex-date.ts";
import { readNames } from "./read-names.ts";
import { readTex } from "./read-tex.ts";

/** A value in one piece, abbreviations put in. */
export interface Field {
  readonly value: string;
  readonly line: number;
}
export interface Entry {
  readonly type: string;
  readonly key: string;
  readonly line: number;
  readonly fields: ReadonlyMap<string, Field>;
}

/** Fields that stand for themselves, by their name in CSL-JSON; where several do, the first that is there. */
const PLAIN: readonly (readonly [string, readonly string[]])[] = [
  ["container-title", ["journaltitle", "journal", "booktitle"]],
  ["collection-title", ["series"]],
  ["volume", ["volume"]],
  ["chapter-number", ["chapter"]],
  ["edition", ["edition"]],
  ["ISBN", ["isbn"]],
  ["ISSN", ["issn"]],
  ["language", ["language", "langid"]],
  ["note", ["note"]],
  ["abstract", ["abstract"]],
];
const NAMES = ["author", "editor", "translator"];
const PUBLISHERS = ["publisher", "institution", "school", "organization"];
/** Read for something else than to be kept, or kept under the type of the item. */
const USED = ["csltype", "entrysubtype", "crossref"];

/** An entry as CSL-JSON, with what could not be read of it and what would not be kept. */
export function cslOfEntry(entry: Entry): DraftItem {
  const { type: entryType, key, line, fields } = entry;
  const used = new Map<string, string>(USED.map((name) => [name, name]));
  const refusals: Refusal[] = [];
  const refuse = (field: string, why: string, remedy: string): void => {
    refusals.push({ line: fields.get(field)?.line ?? line, field, why, remedy });
  };
  /** The first of the fields that is there, as plain text, to be kept as a field of CSL-JSON. */
  const read = (as: string, names: readonly string[]): string | undefined => {
    const name = names.find((each) => fields.get(each)?.value.trim());
    if (name === undefined) return undefined;
    used.set(name, as);
    const { text, unread } = readTex((fields.get(name) as Field).value);
    refuseUnread(name, unread);
    return text;
  };
  const refuseUnread = (name: string, unread: readonly string[]): void => {
    for (const command of new Set(unread))
      refuse(name, `${command} is not understood.`, "Write the sign itself, or leave the command out.");
  };
  const readList = (name: string): readonly CslName[] | undefined => {
    const value = fields.get(name)?.value;
    if (value === undefined || value.trim() === "") return undefined;
    used.set(name, name);
    const found = readNames(value);
    if (typeof found === "string") refuse(name, found, "Part names by “and”, each as Family, Given.");
    else refuseUnread(name, found.unread);
    return typeof found === "string" ? undefined : found.names;
  };
  const address = (name: string): string | undefined => {
    const value = fields.get(name)?.value.trim();
    if (!value) return undefined;
    used.set(name, name.toUpperCase());
    return value.replace(/^\\url\s*\{(.*)\}$/, "$1").replaceAll(/\\([_%&#~$])/g, "$1");
  };

  const url = address("url") ?? urlIn(fields.get("howpublished")?.value);
  const kind = read("type", ["csltype"]) ?? SUBTYPES[read("type", ["entrysubtype"]) ?? ""];
  const type = kind ?? CSL_TYPES[entryType] ?? (url === undefined ? "document" : "webpage");
  const isIssue = /^(?:article|review|periodical)/.test(type);
  const number = isIssue ? "issue" : fields.has("series") ? "collection-number" : "number";
  const issue = read("issue", ["issue"]);
  const place = ["location", "address"];
  const doi = address("doi")?.replace(/^(?:https?:\/\/(?:dx\.)?doi\.org\/|doi:\s*)/i, "");
  const date = (name: string): string | undefined => read("issued", [name]);
  const accessed = readBibtexDate({ date: read("accessed", ["urldate"]) });
  // Beside a type of CSL-JSON, how it came out is only that type in words.
  const how = !fields.has("csltype") && url === undefined ? ["howpublished"] : [];
  const title = [read("title", ["title"]), read("title", ["subtitle"])].filter(Boolean).join(": ");
  const draft = {
    type,
    title: title === "" ? undefined : title,
    ...Object.fromEntries(NAMES.map((name) => [name, readList(name)])),
    issued: readBibtexDate({
      date: date("date"),
      year: date("year"),
      month: date("month"),
      day: date("day"),
    }),
    ...Object.fromEntries(PLAIN.map(([as, names]) => [as, read(as, names)])),
    issue,
    [issue !== undefined && number === "issue" ? "number" : number]: read(number, ["number"]),
    ...(fields.has("eid") ? { number: read("number", ["eid"]) } : {}),
    page: read("page", ["pages"])?.replaceAll(/\s*[–—]\s*/g, "-"),
    publisher: read("publisher", [...PUBLISHERS, ...how]),
    ...(type === "patent"
      ? { jurisdiction: read("jurisdiction", ["jurisdiction", ...place]) }
      : {
          jurisdiction: read("jurisdiction", ["jurisdiction"]),
          "publisher-place": read("publisher-place", place),
        }),
    genre: genreOf(read("genre", ["type"]) ?? THESES[entryType]),
    DOI: doi,
    URL: url,
    accessed,
  };
  return {
    line,
    key,
    draft: Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined)),
    leftOut: [...fields.keys()].filter((name) => !used.has(name)),
    placeOf: (as) => {
      const name = [...used].find(([field, to]) => to === as && fields.has(field))?.[0];
      const field = name === undefined ? undefined : fields.get(name);
      return name === undefined || field === undefined ? undefined : { field: name, line: field.line };
    },
    refusals,
  };
}

const urlIn = (value: string | undefined): string | undefined =>
  value?.match(/^\s*\\url\s*\{([^{}]*)\}\s*$/)?.[1];

/** A thesis that says no more than that it is one has no genre. */
const genreOf = (words: string | undefined): string | undefined =>
  words?.toLowerCase() === "thesis" ? undefined : words;
