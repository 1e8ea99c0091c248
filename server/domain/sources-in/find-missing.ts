import type { CslItem } from "../source.ts";

/** What a good citation of an item also says, in words; it is taken without. */
export function findMissing(item: CslItem): readonly string[] {
  const wanted: readonly (readonly [string, boolean])[] = [
    ["author or editor", hasNames(item) || ANONYMOUS.has(item.type)],
    ["year", item.issued !== undefined],
    [CONTAINERS[item.type] ?? "", !(item.type in CONTAINERS) || isSaid(item["container-title"])],
    ["publisher or place", item.type !== "book" || isSaid(item.publisher) || isSaid(item["publisher-place"])],
    ["university", item.type !== "thesis" || isSaid(item.publisher)],
    ["number", item.type !== "patent" || isSaid(item.number)],
    ["country", item.type !== "patent" || isSaid(item["jurisdiction"])],
    ["address", !item.type.startsWith("web") || isSaid(item.URL)],
  ];
  return wanted.flatMap(([name, isThere]) => (isThere ? [] : [name]));
}

/** Types of which nobody asks who wrote them. */
const ANONYMOUS = new Set(["legislation", "bill", "regulation", "standard", "periodical", "webpage", "map"]);

const CONTAINERS: Readonly<Record<string, string>> = {
  "article-journal": "journal",
  "article-magazine": "magazine",
  "article-newspaper": "newspaper",
  chapter: "book that it stands in",
  "paper-conference": "proceedings that it stands in",
};

const hasNames = ({ author, editor }: CslItem): boolean => Boolean(author?.length || editor?.length);
const isSaid = (value: unknown): boolean => typeof value === "string" && value.trim() !== "";
