import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { zstdCompressSync } from "node:zlib";
import fc from "fast-check";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import type { Edit } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import { problem } from "#server/domain/problem.ts";
import { type Imported, type ImportOptions, importFile } from "#server/importing/import-file.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aSource, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { dumpOf } from "#tests/support/read-all.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-import-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = join(folder, "file.jsonl");
const EXAMPLE = fileURLToPath(new URL("../../../docs/formats/import.example.jsonl", import.meta.url));

let store: Store = openMemoryStore();
beforeEach(() => {
  store = openMemoryStore();
});

const OPTIONS: ImportOptions = {
  ...{ by: "a tester", message: "an import", mayReplace: false, isDry: false },
  now: () => new Date(Date.UTC(2026, 10, 25)),
  tell: () => {},
};
const lineOf = (thing: object): string => {
  const kind = "relation" in thing ? "claim" : "csl" in thing ? "source" : "term";
  return JSON.stringify({ kind, [kind]: thing });
};
const write = (...things: readonly (object | string)[]): void =>
  writeFileSync(
    file,
    things.map((thing) => `${typeof thing === "string" ? thing : lineOf(thing)}\n`).join(""),
  );
const run = (options: Partial<ImportOptions> = {}) => importFile(store, file, { ...OPTIONS, ...options });
async function imported(options: Partial<ImportOptions> = {}): Promise<Imported> {
  const done = await run(options);
  if ("problems" in done) throw new Error(done.problems.map(({ message }) => message).join("\n"));
  return done;
}
async function refused(options: Partial<ImportOptions> = {}): Promise<readonly string[]> {
  const newest = await store.newestRevision();
  const done = await run(options);
  if (!("problems" in done)) throw new Error("It was imported");
  expect(done.total).toBe(done.problems.length);
  expect(await store.newestRevision()).toEqual(newest);
  return done.problems.map(({ message }) => message);
}
const editsOf = async (): Promise<readonly (readonly Edit[])[]> =>
  (await dumpOf(store)).flatMap((record) => (record.kind === "revision" ? [record.change] : []));

const saw = aTerm("tool.saw");
const mark = aTerm("feature.mark");
const book = aSource("source.book");
const cited: Pick<Claim, "citations"> = {
  citations: [{ basis: "published", source: id("source.book"), locator: "p. 1" }],
};
const needs = aClaim({
  id: "claim.1",
  relation: "requires",
  subject: "feature.mark",
  ways: [["tool.saw"]],
  ...cited,
});
const except = aClaim({ id: "claim.2", relation: "void when", of: "claim.1", condition: "feature.mark" });

describe("[S60] a file to import", () => {
  it("is written whole into an empty store, with who, when and why", async () => {
    write(saw, mark, book, needs, except);
    expect(await imported()).toEqual({
      checked: expect.objectContaining({ things: 5, stand: 0, change: 0, uncited: 0 }),
      written: { added: 5, changed: 0, revisions: 1 },
    });
    expect(await store.newestRevision()).toMatchObject({
      ...{ number: 1, by: "a tester", message: "an import", at: "2026-11-25T00:00:00.000Z" },
    });
    expect((await store.claims([needs.id])).get(needs.id)).toEqual(needs);
  });

  it("may be the example of its format, plain or compressed, with blank lines and without a last line feed", async () => {
    const text = readFileSync(EXAMPLE, "utf8");
    writeFileSync(file, text);
    const { checked } = await imported();
    expect(checked).toMatchObject({ things: 6 });
    const plain = await editsOf();
    store = openMemoryStore();
    writeFileSync(file, zstdCompressSync(`\n${text.replaceAll("\n", "\n  \n").trim()}`));
    await imported();
    expect(await editsOf()).toEqual(plain);
  });

  it("may have its lines in any order", async () => {
    const [a, b] = ["feature.a", "feature.b"].map((name, i) =>
      aTerm(name, {
        looking: {
          ...{ how: "Look.", move: "nothing", basis: "from memory" },
          mistakenFor: [
            { what: "the other", term: ["feature.b", "feature.a"][i] as never, apart: "By its depth." },
          ],
        },
      }),
    );
    const things = [except, needs, mark, book, a, saw, b] as object[];
    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray(things, { minLength: things.length }),
        fc.constantFrom(1, 2, 100),
        async (order, thingsARevision) => {
          store = openMemoryStore();
          write(...order);
          expect((await imported({ thingsARevision })).written).toMatchObject({ added: 7 });
          expect((await editsOf()).flat()).toHaveLength(7);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("may lay any graph anew that a store can hold", async () => {
    await fc.assert(
      fc.asyncProperty(anyHistory, fc.constantFrom(1, 3, 1_000), async ({ changes }, thingsARevision) => {
        const from = openMemoryStore();
        for (const change of changes) answered(await from.commit(aCommit(change)));
        const things: object[] = [];
        for await (const terms of from.allTerms({})) things.push(...terms);
        for await (const claims of from.allClaims({})) things.push(...claims);
        things.push(...(await from.listSources({ first: 200 })).rows);
        write(...things.reverse());
        store = openMemoryStore();
        const done = await run({ thingsARevision });
        // Two terms of one kind may have one label in a store; a file is held to more.
        if ("problems" in done) {
          expect(done.problems.every(({ message }) => message.includes("is called"))).toBe(true);
          return;
        }
        expect(done.written.added).toBe(things.length);
        for await (const terms of store.allTerms({}))
          expect([...(await from.terms(terms.map(({ id }) => id))).values()]).toHaveLength(terms.length);
      }),
      { numRuns: 60 },
    );
  });

  const faults: readonly (readonly [string, readonly (object | string)[], readonly RegExp[]])[] = [
    ["is not JSON", ["{"], [/^line 1, field kind: The line is not a JSON object with the kind/]],
    ["is of no kind", ['{"kind":"piece"}'], [/^line 1, field kind: /]],
    [
      "has a field too many",
      [{ ...saw, colour: "red" }],
      [/^line 1, tool\.saw: "term" has "colour", which the format does not know/],
    ],
    ["lacks a field", [{ id: "tool.saw", kind: "tool" }], [/^line 1, tool\.saw.*label/]],
    ["cites nothing", [saw, { ...needs, citations: [] }], [/^line 2, claim\.1, field citations: /]],
    [
      "has a date that cannot be read",
      [
        saw,
        aClaim({ id: "claim.d", relation: "introduced", subject: "tool.saw", when: "1750" }),
        {
          ...aClaim({ id: "claim.e", relation: "introduced", subject: "tool.saw", when: "1750" }),
          when: "circa 1750",
        },
      ],
      [/^line 3, claim\.e, field when: .*Write 1750~ instead/],
    ],
    [
      "has an id of the file a second time",
      [saw, mark, { ...saw, label: "another" }],
      [/^line 3, tool\.saw, field id: The id stands in line 1 too/],
    ],
    [
      "has a label a second time within one kind",
      [saw, aTerm("tool.other", { label: "SAW" })],
      [/^line 2, tool\.other, field label: The tool tool\.saw \(line 1\) is called “SAW” already/],
    ],
    [
      "names a term that is nowhere",
      [mark, { ...needs, citations: [{ basis: "from memory" }] }],
      [/^line 2, claim\.1, field ways\[0\]\[0\]: There is no term tool\.saw/],
    ],
    [
      "names a source that is nowhere",
      [saw, mark, needs],
      [/^line 3, claim\.1, field citations\[0\]\.source: There is no source source\.book/],
    ],
    [
      "names a claim that is nowhere",
      [mark, except],
      [/^line 2, claim\.2, field of: There is no claim claim\.1/],
    ],
    [
      "names a term of a kind that cannot stand there",
      [
        aTerm("region.a"),
        mark,
        aClaim({ id: "claim.k", relation: "requires", subject: "feature.mark", ways: [["region.a"]] }),
      ],
      [/^line 3, claim\.k, field ways\[0\]\[0\]: The term region\.a is a region/],
    ],
    [
      "closes a circle of broader terms",
      [aTerm("tool.a", { broader: "tool.b" }), aTerm("tool.b", { broader: "tool.a" })],
      [/^line 1, tool\.a, field broader: .*broader than itself/, /^line 2, tool\.b, field broader: /],
    ],
    [
      "closes a circle of exceptions",
      [mark, { ...except, id: "claim.a", of: "claim.b" }, { ...except, id: "claim.b", of: "claim.a" }],
      [/^line 2, claim\.a, field of: .*exception of itself/, /^line 3, claim\.b, field of: /],
    ],
  ];
  it.each(faults)("is refused before anything of it is written where a line %s", async (_, lines, wanted) => {
    write(...lines);
    const messages = await refused({ thingsARevision: 1 });
    expect(messages).toHaveLength(wanted.length);
    for (const [i, pattern] of wanted.entries()) expect(messages[i]).toMatch(pattern);
  });

  it("is refused with all that is wrong, by line, and what names a line that is refused is not told on top", async () => {
    write({ ...saw, label: "" }, mark, "{", needs, aTerm("tool.axe"), aTerm("tool.axe"));
    expect(await refused()).toEqual([
      expect.stringMatching(/^line 1, tool\.saw, field label: /),
      expect.stringMatching(/^line 3, field kind: /),
      expect.stringMatching(/^line 4, claim\.1, field citations\[0\]\.source: /),
      expect.stringMatching(/^line 6, tool\.axe, field id: /),
    ]);
  });

  it("tells a thousand problems and how many there are in all", async () => {
    write(...Array.from({ length: 1_200 }, () => "{"));
    const done = await run();
    expect(done).toMatchObject({ total: 1_200 });
    expect("problems" in done && done.problems).toHaveLength(1_000);
  });

  it("that cannot be read, is cut within its packing, or is no UTF-8 is refused", async () => {
    expect(await importFile(store, join(folder, "none.jsonl"), OPTIONS)).toMatchObject({
      problems: [{ code: "UNREADABLE_FILE" }],
    });
    const packed = zstdCompressSync(`${lineOf(saw)}\n`);
    writeFileSync(file, packed.subarray(0, packed.length - 3));
    expect(await refused()).toEqual([expect.stringMatching(/^The file is damaged after line \d+: /)]);
    writeFileSync(file, Buffer.from([0xff, 0xfe, 0x0a]));
    expect(await refused()).toEqual([expect.stringMatching(/^The file is not UTF-8 text/)]);
  });

  it("is only looked through where that is asked for", async () => {
    write(saw, mark, book, needs);
    expect((await imported({ isDry: true })).written).toEqual({ added: 0, changed: 0, revisions: 0 });
    expect(await store.newestWrite()).toBe(0);
  });

  it("tells the sources that nothing in it cites", async () => {
    write(book, aSource("source.other"));
    expect((await imported()).checked.uncited).toBe(2);
  });
});

describe("[S61] what stands already", () => {
  it("is found by its content: the same file again makes no revision", async () => {
    write(saw, mark, book, needs, except);
    await imported({ thingsARevision: 2 });
    const before = await dumpOf(store);
    const again = await imported({ thingsARevision: 2 });
    expect(again).toMatchObject({ checked: { things: 5, stand: 5 }, written: { added: 0, revisions: 0 } });
    expect(await dumpOf(store)).toEqual(before);
  });

  it("can be named by what a file brings, and is checked with it", async () => {
    answered(await store.commit(aCommit(adding(saw, mark, book, needs))));
    write(except, aTerm("tool.band-saw", { broader: "tool.saw" }));
    expect((await imported()).written).toEqual({ added: 2, changed: 0, revisions: 1 });
    write(aTerm("feature.other", { label: "Mark" }));
    expect(await refused()).toEqual([
      expect.stringMatching(
        /^line 1, feature\.other, field label: The feature feature\.mark of the store is called/,
      ),
    ]);
  });

  it("otherwise than in the file speaks against the file, or is changed where that is asked for", async () => {
    answered(await store.commit(aCommit(adding(saw, mark))));
    write({ ...saw, note: "A toothed blade." }, mark, aTerm("tool.axe"));
    expect(await refused()).toEqual([
      expect.stringMatching(/^line 1, tool\.saw, field id: Under this id another term stands/),
    ]);
    expect((await imported({ mayReplace: true })).written).toEqual({ added: 1, changed: 1, revisions: 1 });
    expect((await editsOf())[1]?.[0]).toMatchObject({ before: saw, after: { note: "A toothed blade." } });
    write({ ...saw, kind: "material" });
    expect(await refused({ mayReplace: true })).toEqual([
      expect.stringMatching(/^line 1, tool\.saw, field kind: .*cannot turn/),
    ]);
  });

  it("is not written twice where the import was broken off between two revisions", async () => {
    const things = [saw, mark, book, needs, except, aTerm("tool.axe")];
    for (let kept = 0; kept < 4; kept++) {
      store = openMemoryStore();
      write(...things);
      let commits = 0;
      const failing: Store = {
        ...store,
        commit: async (commit) =>
          commits++ < kept ? store.commit(commit) : problem("STORE_UNREACHABLE", "The server is gone."),
      };
      const first = await importFile(failing, file, { ...OPTIONS, thingsARevision: 2 });
      if (kept < 3)
        expect(first).toMatchObject({ refusal: { code: "STORE_UNREACHABLE" }, written: { revisions: kept } });
      await imported({ thingsARevision: 2 });
      expect((await editsOf()).flat()).toHaveLength(things.length);
      expect((await editsOf()).flat().every(({ before }) => before === undefined)).toBe(true);
    }
  });
});
