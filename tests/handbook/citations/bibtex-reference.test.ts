import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readList } from "#server/domain/sources-in/read-list.ts";

const textOf = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");

type Item = Readonly<Record<string, unknown>> & { readonly id: string };

/**
 * What pandoc 3.9 (a converter of documents whose BibTeX reader shares nothing with ours) makes of the same file:
 * `pandoc -f bibtex -t csljson tricky-entries.bib`, keys sorted.
 */
const theirs = new Map((JSON.parse(textOf("pandoc.json")) as readonly Item[]).map((item) => [item.id, item]));

/** Ours by key; all of them are taken. */
function readOurs(): ReadonlyMap<string, Item> {
  const read = readList(textOf("tricky-entries.bib"), []);
  if (typeof read === "string") throw new Error(read);
  return new Map(
    read.map(({ csl, text, refusals }) => {
      if (csl === undefined) throw new Error(`${text}: ${refusals.map(({ why }) => why).join(" ")}`);
      return [csl.id.replace("source.", ""), csl as Item];
    }),
  );
}

/** Where the two differ by intent: entry, field, and why. */
const DIFFERENCES: readonly (readonly [string, string, string])[] = [
  ["two", "issued", "theirs leaves a span of years out where two hyphens part them"],
  ["twelve", "issued", "theirs leaves out a year that is no plain year; ours keeps its words"],
  ["thirteen", "issued", "the same"],
  ["seven", "type", "theirs gives a miscellaneous entry no type; ours makes it a web page by its address"],
  ["eight", "title", "a dotless i under an accent is an i with that accent in ours"],
  ["eighteen", "author", "theirs cuts d' off as a particle; BibTeX parts words at spaces only"],
  ["eight", "URL", "ours takes the backslash before an underscore out of an address"],
];

/**
 * One form for what the two write differently without meaning anything else: theirs sets titles in sentence case, marks
 * italics, has curly apostrophes and hard spaces, and says a short title.
 */
function plain(value: unknown): unknown {
  if (typeof value === "string")
    return value
      .replaceAll(/<[^>]+>/g, "")
      .replaceAll("’", "'")
      .replaceAll("\u00a0", " ")
      .normalize("NFC")
      .toLowerCase();
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === "object" && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
  return value;
}

describe("a file of entries that are hard to read", () => {
  const ours = readOurs();

  it("has the same entries in the same order for both readers", () => {
    expect([...ours.keys()]).toEqual([...theirs.keys()]);
    expect(ours.size).toBe(20);
  });

  const rows = [...theirs].flatMap(([key, item]) =>
    [...new Set([...Object.keys(item), ...Object.keys(ours.get(key) ?? {})])]
      .filter((field) => field !== "id" && field !== "title-short")
      .map((field) => [key, field] as const),
  );
  const isIntended = (key: string, field: string): boolean =>
    DIFFERENCES.some(([ofKey, ofField]) => ofKey === key && ofField === field);

  it.each(rows.filter(([key, field]) => !isIntended(key, field)))(
    "[P44] %s has the same %s for both readers",
    (key, field) => {
      expect(plain(ours.get(key)?.[field])).toEqual(plain(theirs.get(key)?.[field]));
    },
  );

  it.each(DIFFERENCES)("%s still differs in its %s: %s", (key, field) => {
    expect(plain(ours.get(key)?.[field])).not.toEqual(plain(theirs.get(key)?.[field]));
  });
});
