import fc from "fast-check";
import MiniSearch from "minisearch";
import { describe, expect, it } from "vitest";
import { compareIds } from "#server/domain/compare.ts";
import type { Term } from "#server/domain/term.ts";
import { editsApart } from "#server/search/edits-apart.ts";
import { termSearch } from "#server/search/term-search.ts";
import { wordsOf } from "#server/search/words.ts";
import { aTerm } from "#tests/support/build-change.ts";

const WORDS = ["saw", "saws", "sawn", "circular", "circle", "pit", "mark", "marks", "dovetail", "béquille"];
const text = (least: number, most: number) =>
  fc.array(fc.constantFrom(...WORDS), { minLength: least, maxLength: most }).map((words) => words.join(" "));
const anyTerm = fc
  .record({
    kind: fc.constantFrom("tool", "feature"),
    number: fc.nat(11),
    label: text(1, 3),
    otherLabels: fc.array(text(1, 2), { maxLength: 2 }),
    note: text(0, 6),
  })
  .map(({ kind, number, label, otherLabels, note }) =>
    aTerm(`${kind}.${number}`, { label, otherLabels, note }),
  );
const byId = (terms: readonly Term[]): readonly Term[] =>
  [...new Map(terms.map((term) => [term.id, term])).values()].sort(compareIds);
const anyTerms = fc.array(anyTerm, { maxLength: 12 }).map(byId);
/** Whole words, beginnings, and words with a letter too many. */
const anyQuery = fc
  .array(
    fc
      .tuple(fc.constantFrom(...WORDS, "xylophone"), fc.nat(3), fc.nat(8))
      .map(([word, how, at]) =>
        how === 0 ? word.slice(0, at + 1) : how === 1 ? `${word.slice(0, at)}x${word.slice(at)}` : word,
      ),
    { minLength: 1, maxLength: 3 },
  )
  .map((words) => words.join(" "));

function indexed(terms: readonly Term[]) {
  const search = termSearch();
  for (const after of terms) search.apply({ after });
  return search;
}

/** The ids that the library finds: another program with another index, told of the same words and errors forgiven. */
function foundByLibrary(terms: readonly Term[], query: string): readonly string[] {
  const known = new Set(
    terms.flatMap(({ label, otherLabels = [], note = "" }) => [
      ...wordsOf([label, ...otherLabels, note].join(" ")),
    ]),
  );
  const library = new MiniSearch<Term>({
    fields: ["label", "otherLabels", "note"],
    extractField: (term, field) => {
      const value = term[field as "id" | "label" | "otherLabels" | "note"] ?? "";
      return typeof value === "string" ? value : value.join(" ");
    },
    tokenize: (words) => [...wordsOf(words)],
    processTerm: (word) => word,
    searchOptions: {
      prefix: true,
      fuzzy: (word) => !known.has(word) && (word.length < 4 ? 0 : word.length < 8 ? 1 : 2),
    },
  });
  library.addAll(terms);
  const all = library.search(query, { combineWith: "AND" });
  return (all.length > 0 ? all : library.search(query, { combineWith: "OR" })).map(({ id }) => id).sort();
}

describe("the search of terms", () => {
  it("[S13] finds what another library finds by the same words", () => {
    fc.assert(
      fc.property(anyTerms, anyQuery, (terms, query) => {
        const found = indexed(terms).find(query, {}, 200);
        expect(found.map(({ term }) => term as string).sort()).toEqual(foundByLibrary(terms, query));
      }),
    );
  });

  it("[S65] says the same after any changes as an index made afresh, scores too", () => {
    fc.assert(
      fc.property(fc.array(anyTerms, { minLength: 1, maxLength: 40 }), anyQuery, (states, query) => {
        const search = termSearch();
        let standing: readonly Term[] = [];
        for (const next of states) {
          const before = new Map(standing.map((term) => [term.id, term]));
          for (const after of next) {
            const was = before.get(after.id);
            search.apply(was === undefined ? { after } : { before: was, after });
            before.delete(after.id);
          }
          for (const gone of before.values()) search.apply({ before: gone });
          standing = next;
        }
        expect(search.find(query, {}, 200)).toEqual(indexed(standing).find(query, {}, 200));
      }),
    );
  });

  it("[S65] forgets the places of terms that were changed very often", () => {
    const search = termSearch();
    let before = aTerm("tool.saw", { note: "0" });
    search.apply({ after: before });
    for (let n = 1; n <= 25_000; n++) {
      const after = aTerm("tool.saw", { note: String(n) });
      search.apply({ before, after });
      before = after;
    }
    expect(search.find("25000", {}, 5)).toMatchObject([{ term: "tool.saw" }]);
    expect(search.find("24999", {}, 5)).toEqual([]);
    expect(search.find("saw", {}, 5)).toEqual(indexed([before]).find("saw", {}, 5));
  });

  it("[S13] counts letters changed, left out and added, up to as many as are forgiven", () => {
    const letters = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 6 });
    fc.assert(
      fc.property(letters, letters, fc.nat(3), (a, b, most) => {
        const apart = distance(a, b);
        expect(editsApart(a, b, most)).toBe(apart <= most ? apart : undefined);
      }),
    );
  });
});

/** By the definition, without any table. */
function distance(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [restA, restB] = [a.slice(1), b.slice(1)];
  if (a[0] === b[0]) return distance(restA, restB);
  return 1 + Math.min(distance(restA, b), distance(a, restB), distance(restA, restB));
}
