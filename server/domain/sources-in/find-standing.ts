import { foldName as fold } from "../fold-name.ts";
import type { CslItem } from "../source.ts";
import type { KnownItem, Standing } from "./read-item.ts";

/** Sources to compare with, found by what they have in common with an item. */
export interface StandingSources {
  find(item: CslItem, key: string): Standing | undefined;
  /** Another item of the list, which those after it are compared with too. */
  add(item: CslItem, at: number): void;
  hasId(id: string): boolean;
}

/** All sources of the graph, to be added to from the list as it is read. */
export function standingSources(known: readonly KnownItem[]): StandingSources {
  const found = new Map<string, { readonly id: string; readonly at?: number }>();
  const ids = new Map<string, string>();
  const add = (item: KnownItem, at?: number): void => {
    for (const [, mark] of marksOf(item))
      if (!found.has(mark)) found.set(mark, { id: item.id, ...(at === undefined ? {} : { at }) });
    ids.set(item.id.toLowerCase(), fold(item["title"]));
  };
  for (const item of known) add(item);
  return {
    find: (item, key) => {
      const titled = [`source.${key}`, key].find((id) => ids.get(id.toLowerCase()) === fold(item.title));
      if (titled !== undefined) return { id: titled, same: "id and title" };
      for (const [same, mark] of marksOf(item)) {
        const other = found.get(mark);
        if (other !== undefined) return { ...other, same };
      }
      return undefined;
    },
    add,
    hasId: (id) => ids.has(id.toLowerCase()),
  };
}

/** By what it would be known again, the surest first. */
function marksOf(item: KnownItem): readonly (readonly [Standing["same"], string])[] {
  const text = (field: string): string =>
    typeof item[field] === "string" ? (item[field] as string).trim().toLowerCase() : "";
  const doi = text("DOI").replace(/^https?:\/\/(?:dx\.)?doi\.org\//, "");
  const address = text("URL")
    .replace(/^https?:\/\/(?:www\.)?/, "")
    .replace(/\/+$/, "");
  const title = fold(item["title"]);
  const years = yearsOf(item);
  return [
    ...(doi === "" ? [] : [["DOI", `doi ${doi}`] as const]),
    // A chapter has the number of the book that it stands in.
    ...(isPart(item) ? [] : isbnsOf(text("ISBN")).map((isbn) => ["ISBN", `isbn ${isbn}`] as const)),
    ...(address === "" ? [] : [["address", `url ${address}`] as const]),
    ...(title === "" || years === "" ? [] : [["title and year", `title ${title} ${years}`] as const]),
  ];
}

const isPart = ({ type }: KnownItem): boolean =>
  typeof type === "string" && /^(?:chapter|entry|paper)/.test(type);

/** Numbers of books without hyphens, ten figures as the thirteen that they became (ISO 2108). */
const isbnsOf = (text: string): readonly string[] =>
  [...text.matchAll(/(?:97[89][- ]?)?(?:\d[- ]?){9}[\dx]/gi)].map(([isbn]) => {
    const figures = isbn.replaceAll(/[- ]/g, "");
    return (figures.length === 10 ? `978${figures}` : figures).slice(0, 12);
  });

function yearsOf({ issued }: KnownItem): string {
  const { "date-parts": parts, raw } = (issued ?? {}) as { "date-parts"?: unknown; raw?: unknown };
  if (Array.isArray(parts)) return parts.map((date) => (Array.isArray(date) ? date[0] : "")).join("-");
  return typeof raw === "string" ? raw : "";
}
