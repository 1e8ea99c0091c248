import { readFileSync } from "node:fs";
import { Engine } from "citeproc";
import { describe, expect, it } from "vitest";
import { citeSource } from "#server/domain/cite-source.ts";
import type { Source } from "#server/domain/source.ts";
import { readSeedLines } from "#tests/seed/read-seed-lines.ts";
import { parseSeed } from "#tests/seed/seed-graph.ts";

/*
 * Our citations beside those of citeproc-js 2.4.63 (F. Bennett; CPAL 1.0 or AGPL 1.0, used by this test alone) with the
 * style "Chicago Manual of Style 16th edition (notes and bibliography)" of the Citation Style Language project and its
 * British locale, both Creative Commons Attribution-ShareAlike 3.0, as they stand in this folder.
 */
const textOf = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");
const { sources } = parseSeed(readSeedLines());

function citeByChicago(): ReadonlyMap<string, string> {
  const items = new Map(sources.map((source) => [source.id as string, source.csl]));
  const locale = textOf("locales-en-GB.xml");
  const engine = new Engine(
    { retrieveLocale: () => locale, retrieveItem: (id) => structuredClone(items.get(id)) },
    textOf("chicago-notes-bibliography-16th-edition.csl"),
    "en-GB",
    true,
  );
  engine.setOutputFormat("text");
  engine.updateItems([...items.keys()]);
  return new Map([...items.keys()].map((id) => [id, engine.makeCitationCluster([{ id }])]));
}

const chicago = citeByChicago();
const chicagoOf = ({ id }: Source): string => chicago.get(id) ?? "";

/** Words and numbers in small letters, marks aside. */
const wordsOf = (text: string): readonly string[] =>
  text
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/(?<=\d),(?=\d{3})/g, "")
    .match(/[\p{L}\p{N}]+/gu) ?? [];

/** What Chicago says in words of its own, or says of addresses, which ours leaves to the page of the source. */
const OWN_WORDS = new Set(["n", "d", "issued", "pub", "l", "no", "volume", "vol", "in", "ed", "edn", "nos"]);
const withoutAddress = (text: string): string => text.replaceAll(/(?:https?:\/\/|doi:)\S+/g, "");

/** Pages in the short form of Chicago (301-6) written out. */
const withWholePages = (text: string): string =>
  text.replaceAll(/(\d+)–(\d+)/g, (all, from: string, to: string) =>
    to.length < from.length ? `${from}–${from.slice(0, from.length - to.length)}${to}` : all,
  );

function missingFrom(source: Source): readonly string[] {
  const ours = wordsOf(withWholePages(citeSource(source)));
  const left = [...ours];
  return wordsOf(withWholePages(withoutAddress(chicagoOf(source)))).filter((word) => {
    const at = left.indexOf(word);
    if (at >= 0) left.splice(at, 1);
    return at < 0 && !OWN_WORDS.has(word);
  });
}

describe("our citations beside The Chicago Manual of Style's", () => {
  it("[G31] say all that Chicago says of every source of the seed graph", () => {
    const less = sources
      // A page of a statute is the place of a citation with us; "1830s" is a year to citeproc.
      .filter(({ csl }) => csl.type !== "legislation" && csl.issued?.raw === undefined)
      .map((source) => ({ id: source.id, missing: missingFrom(source) }))
      .filter(({ missing }) => missing.length > 0);
    expect(less).toEqual([]);
  });

  it("[G31] put the same titles into quotation marks, those of statutes aside", () => {
    const isQuotedBy = (text: string, [first, last]: string, title: string): boolean => {
      const at = wordsOf(title).join(" ");
      const quoted = text.slice(text.indexOf(first as string) + 1, text.lastIndexOf(last as string));
      return text.includes(first as string) && wordsOf(quoted).join(" ").startsWith(at);
    };
    const other = sources
      .filter(({ csl }) => csl.type !== "legislation")
      .filter(
        (source) =>
          isQuotedBy(citeSource(source), "“”", source.csl.title ?? "") !==
          isQuotedBy(chicagoOf(source), "‘’", source.csl.title ?? ""),
      )
      .map((source) => [citeSource(source), chicagoOf(source)]);
    expect(other).toEqual([]);
  });

  it("[G31] name the same people in the same order before the title", () => {
    const other = sources
      .filter(({ csl }) => (csl.author?.length ?? 0) > 0)
      .filter((source) => {
        const title = wordsOf(source.csl.title ?? "")[0] ?? "";
        const namesIn = (text: string) => {
          const words = wordsOf(text).map((word) =>
            word === "al" ? "others" : word === "et" ? "and" : word,
          );
          return words.slice(0, words.indexOf(title)).join(" ");
        };
        return namesIn(citeSource(source)) !== namesIn(chicagoOf(source));
      })
      .map((source) => [citeSource(source), chicagoOf(source)]);
    expect(other).toEqual([]);
  });

  it("are compared for kinds of every sort", () => {
    expect(sources.length).toBeGreaterThan(600);
    expect(new Set(sources.map(({ csl }) => csl.type)).size).toBeGreaterThan(15);
    expect(chicagoOf(sources.find(({ id }) => id === "source.hayward-drawer") as Source)).toMatch(
      /Four Centuries of Drawer Making’, in The Woodworker/,
    );
  });
});
