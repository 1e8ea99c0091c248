import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aSource, aTerm } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

const lines = (...things: readonly object[]): string =>
  things.map((thing) => `${JSON.stringify(thing)}\n`).join("");
const claim = aClaim({
  ...{ id: "claim.1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] },
  citations: [{ basis: "published", source: id("source.book"), locator: "p. 1" }],
});
const WHOLE: Readonly<Record<string, string>> = {
  "revision.json": '{ "at": "2026-11-25T00:00:00Z", "by": "seed", "message": "First part" }',
  "terms/tools.jsonl": lines(aTerm("tool.saw"), aTerm("tool.any")),
  "terms/features.jsonl": lines(aTerm("feature.mark")),
  "claims/saws.jsonl": lines(claim),
  "sources/books.jsonl": lines(aSource("source.book")),
  "pieces/chest.json": JSON.stringify({
    format: "scribeline/piece",
    version: 1,
    id: "examination.chest",
    ...aPiece(),
  }),
};

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-seed-"));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

async function seededWith(files: Readonly<Record<string, string>>) {
  const store = openMemoryStore();
  const seed = await readSeed(folderWith(files));
  return { store, done: "problem" in seed ? seed : await seedStore(store, seed) };
}

describe("[S17] a new store", () => {
  it("gets the terms, claims and sources of the seed as one revision, and its pieces", async () => {
    const { store, done } = await seededWith(WHOLE);
    expect(done).toBe(true);
    expect(await store.newestRevision()).toMatchObject({
      number: 1,
      at: "2026-11-25T00:00:00Z",
      by: "seed",
      message: "First part",
    });
    expect((await store.listTerms({}, { first: 9 })).rows.map((term) => term.id)).toEqual([
      "feature.mark",
      "tool.any",
      "tool.saw",
    ]);
    expect((await store.listClaims({}, { first: 9 })).rows).toEqual([claim]);
    expect((await store.listSources({ first: 9 })).total).toBe(1);
    expect((await store.examination(id("examination.chest")))?.piece).toEqual(aPiece());
  });

  it("gets the same first revision however the seed is divided into files", async () => {
    const { "terms/tools.jsonl": _, "terms/features.jsonl": __, ...rest } = WHOLE;
    const one = await seededWith(WHOLE);
    const two = await seededWith({
      ...rest,
      "terms/z.jsonl": lines(aTerm("feature.mark"), aTerm("tool.saw")),
      "terms/a.jsonl": `\n${lines(aTerm("tool.any"))}\n`,
    });
    expect(await two.store.newestRevision()).toEqual(await one.store.newestRevision());
  });

  it("is seeded once", async () => {
    const { store } = await seededWith(WHOLE);
    const again = answered(
      await readSeed(folderWith({ ...WHOLE, "terms/more.jsonl": lines(aTerm("tool.more")) })),
    );
    expect(await seedStore(store, again)).toBe(false);
    expect((await store.newestRevision())?.number).toBe(1);
  });

  it("gets what was missing where an earlier start broke off", async () => {
    const store = openMemoryStore();
    const seed = answered(await readSeed(folderWith(WHOLE)));
    answered(await store.createExamination(id("examination.chest"), aPiece(), seed.at));
    expect(await seedStore(store, seed)).toBe(true);
    expect((await store.examination(id("examination.chest")))?.version).toBe(1);
  });

  it.each<readonly [string, string, Readonly<Record<string, string | undefined>>, RegExp]>([
    ["no revision.json", "UNREADABLE_FILE", { "revision.json": undefined }, /revision\.json/],
    [
      "a revision.json without a time",
      "WRONG_FORMAT",
      { "revision.json": '{"by":"a","message":"b"}' },
      /at, by and message/,
    ],
    [
      "a line that is no JSON",
      "WRONG_FORMAT",
      { "terms/bad.jsonl": `${lines(aTerm("tool.x"))}{` },
      /bad\.jsonl.*line 2/,
    ],
    ["a line without an id", "WRONG_FORMAT", { "claims/bad.jsonl": "{}" }, /bad\.jsonl.*line 1/],
    [
      "a piece without an id",
      "WRONG_FORMAT",
      { "pieces/chest.json": JSON.stringify(aPiece()) },
      /chest\.json/,
    ],
    ["a piece without a title", "WRONG_FORMAT", { "pieces/chest.json": '{"id":"examination.x"}' }, /title/],
    ["a thing given twice", "DUPLICATE_ID", { "terms/twice.jsonl": lines(aTerm("tool.saw")) }, /tool\.saw/],
    [
      "a claim that names a missing term",
      "UNKNOWN_TERM",
      { "terms/features.jsonl": undefined },
      /saws\.jsonl, line 1, claim\.1, field subject: .*feature\.mark/,
    ],
  ])("is not made of a seed with %s", async (_, code, changed, message) => {
    const files = Object.fromEntries(
      Object.entries({ ...WHOLE, ...changed }).filter(
        (entry): entry is [string, string] => entry[1] !== undefined,
      ),
    );
    const { store, done } = await seededWith(files);
    expect(refusedWith(done)).toBe(code);
    expect((done as { message: string }).message).toMatch(message);
    expect(await store.newestRevision()).toBeUndefined();
  });
});
