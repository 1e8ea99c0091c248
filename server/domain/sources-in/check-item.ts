import type { CslItem, CslName } from "../source.ts";
import { KINDS } from "./kinds.ts";
import type { Refusal } from "./read-item.ts";

/** What is wrong with one field of an item, by its name in CSL-JSON. */
export type ItemRefusal = Omit<Refusal, "line" | "field"> & { readonly of: string };

/** Fields that we print, which CSL-JSON also lets be numbers. */
const TEXTS = [
  ...["publisher", "publisher-place", "container-title", "collection-title", "volume", "issue", "page"],
  ...[
    "number",
    "edition",
    "chapter-number",
    "collection-number",
    "jurisdiction",
    "genre",
    "URL",
    "DOI",
    "ISBN",
  ],
  ...["note"],
];
const NAMES = ["author", "editor", "translator"];

/** Why an item cannot become a source; empty if it can. Whether it has a name of its own is not looked at. */
export function checkItem(item: Readonly<Record<string, unknown>>): readonly ItemRefusal[] {
  const { type, title, issued } = item;
  return [
    ...(typeof type === "string" && Object.hasOwn(KINDS, type) ? [] : [wrongType(type)]),
    ...(typeof title === "string" && title.trim() !== ""
      ? []
      : [
          {
            of: "title",
            why: "It has no title.",
            remedy: "Give it one; a heading in square brackets will do.",
          },
        ]),
    ...NAMES.filter((role) => !areNames(item[role])).map((role) => ({
      of: role,
      ...{ why: "It cannot be read.", remedy: 'Write a list of {"family", "given"} or {"literal"}.' },
    })),
    ...(isDate(issued)
      ? []
      : [
          {
            ...{ of: "issued", why: "It cannot be read as a date." },
            remedy: 'Write {"date-parts": [[1923]]} or {"raw": "1923"}.',
          },
        ]),
    ...TEXTS.filter((field) => !["undefined", "string", "number"].includes(typeof item[field])).map(
      (field) => ({ of: field, why: "It is not a text.", remedy: "Write it as one." }),
    ),
  ];
}

/** The item with texts where it has numbers, in its dates the other way round. */
export function withTexts(item: CslItem): CslItem {
  const texts = TEXTS.filter((field) => typeof item[field] === "number").map((field) => [
    field,
    `${item[field]}`,
  ]);
  const parts = item.issued?.["date-parts"]?.map((date) => date.map(Number));
  const issued = parts === undefined ? {} : { issued: { ...item.issued, "date-parts": parts } };
  return { ...item, ...Object.fromEntries(texts), ...issued };
}

const wrongType = (type: unknown): ItemRefusal => ({
  of: "type",
  ...(typeof type === "string"
    ? {
        why: `Items of type ${type} are not read here.`,
        remedy: "Choose the nearest of those of CSL-JSON, such as book, article-journal or webpage.",
      }
    : { why: "It has no type.", remedy: "Give it one, such as book, article-journal or webpage." }),
});

function areNames(names: unknown): boolean {
  const isName = (name: unknown): boolean => {
    if (typeof name !== "object" || name === null) return false;
    const { literal, family, given } = name as CslName;
    const said = [literal, family, given].filter((part) => part !== undefined);
    return said.length > 0 && said.every((part) => typeof part === "string");
  };
  return names === undefined || (Array.isArray(names) && names.every(isName));
}

/** Left out, a text as it stands, or years with months and days. */
function isDate(issued: unknown): boolean {
  if (issued === undefined) return true;
  if (typeof issued !== "object" || issued === null) return false;
  const { raw, "date-parts": parts } = issued as { raw?: unknown; "date-parts"?: unknown };
  if (parts === undefined) return typeof raw === "string";
  const isPart = (part: unknown): boolean => /^\d{1,4}$/.test(String(part));
  return (
    (raw === undefined || typeof raw === "string") &&
    Array.isArray(parts) &&
    parts.length > 0 &&
    parts.every((date) => Array.isArray(date) && date.length > 0 && date.every(isPart))
  );
}
