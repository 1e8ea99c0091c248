import { closeSync, copyFileSync, openSync, readFileSync, writeFileSync, writeSync } from "node:fs";
import { join } from "node:path";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { StoreFailed } from "#server/ports/store-failed.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { allRows } from "#tests/support/read-all.ts";
import { addCounts, type Counts, NOTHING_COUNTED } from "../counts.ts";
import type { Fault } from "../fault.ts";
import { inTemporaryFolder } from "../temporary-folder.ts";
import { openWriter } from "../write-some.ts";

const FAULTS_A_STORE = 50;
/** Of each half; between them the file is as it was "before". */
const WRITES = 30;
const PAGE = 4096;

/**
 * Pages of a file are spoilt, closed or while a store has it open. Wherever everything was read and `verify` is content,
 * everything has to be what was written.
 */
export const corruptPage: Fault = {
  name: "corrupt-page",
  what: "pages of a SQLite file overwritten, closed or open: random bytes, zeros, one bit, another page, the page as it was before",
  times: 1000,
  round: (random, faults) =>
    inTemporaryFolder(async (folder) => {
      const [path, older] = [join(folder, "scribeline.sqlite"), join(folder, "older.sqlite")];
      for (const run of ["w", "x"]) {
        const store = answered(await openSqliteStore(path));
        const writer = openWriter(store, random, run);
        while (writer.entries.length < WRITES) await writer.next();
        await store.close();
        if (run === "w") copyFileSync(path, older);
      }
      const store = answered(await openSqliteStore(path));
      const sound = await readEverything(store);
      await store.close();
      let counts = NOTHING_COUNTED;
      for (let fault = 0; fault < Math.min(faults, FAULTS_A_STORE); fault++) {
        const spoilt = join(folder, `spoilt-${fault}.sqlite`);
        copyFileSync(path, spoilt);
        const found = random.chance(0.5)
          ? await lookAtClosed(spoilt, older, sound, random)
          : await lookAtOpen(spoilt, older, sound, random);
        counts = addCounts(counts, { ...found, faults: 1 });
      }
      return counts;
    }),
};

type Found = Pick<Counts, "also" | "findings">;
const seen = (where: string, ...findings: readonly string[]): Found => ({ also: { [where]: 1 }, findings });

async function lookAtClosed(
  path: string,
  older: string,
  sound: string,
  random: RandomSource,
): Promise<Found> {
  const what = spoil(path, older, random);
  const store = await openSqliteStore(path);
  if (isProblem(store))
    return seen(
      "closed: found at opening",
      ...typed(store.code, what, ["STORE_CORRUPT", "WRONG_FORMAT", "OTHER_VERSION"]),
    );
  return lookThrough(store, sound, what, "closed");
}

async function lookAtOpen(path: string, older: string, sound: string, random: RandomSource): Promise<Found> {
  const store = answered(await openSqliteStore(path));
  if (random.chance(0.5)) await store.listTerms({}, { first: 5 });
  const what = spoil(path, older, random);
  const found = await lookThrough(store, sound, what, "open");
  const again = await openSqliteStore(path);
  if (isProblem(again)) return found;
  const later = await lookThrough(again, sound, what, "opened again");
  return { also: { ...found.also, ...later.also }, findings: [...found.findings, ...later.findings] };
}

/** Reads all there is, then verifies; what is wrong has to be found by one of them. */
async function lookThrough(store: Store, sound: string, what: string, when: string): Promise<Found> {
  try {
    const read = await readEverything(store).catch((failure: unknown) => failure);
    const verified = await store.verify();
    const isFound = isProblem(verified);
    const findings = isFound ? typed(verified.code, what, ["STORE_CORRUPT"]) : [];
    if (typeof read === "string" && read === sound)
      return seen(`${when}: ${isFound ? "found by verify" : "harmless"}`, ...findings);
    if (read instanceof StoreFailed) {
      const missed = isFound ? [] : [`${what}: ${when}, a read failed and verify is content`];
      return seen(
        `${when}: found by a read`,
        ...findings,
        ...missed,
        ...typed(read.problem.code, what, ["STORE_CORRUPT"]),
      );
    }
    if (read instanceof Error) return seen(`${when}: a defect`, `${what}: ${when}, ${read.stack}`);
    if (isFound) return seen(`${when}: wrong in a read, found by verify`, ...findings);
    return seen(`${when}: wrong`, `${what}: ${when}, reads are wrong and verify is content`);
  } finally {
    await store.close();
  }
}

const typed = (code: string, what: string, expected: readonly string[]): readonly string[] =>
  expected.includes(code) ? [] : [`${what}: answered with ${code}`];

/** What a store holds, by every kind of reading. */
async function readEverything(store: Store): Promise<string> {
  const dump: unknown[] = [];
  for await (const record of store.dump()) dump.push(record);
  const terms = await allRows((page) => store.listTerms({}, page), 50);
  const examinations = await allRows((page) => store.listExaminations(page), 50);
  const one = await store.terms(terms.slice(0, 3).map(({ id }) => id));
  const seeds = terms.slice(0, 5).map(({ id }) => id);
  const { claims, ...walked } = await store.neighbourhood({ seeds, regions: [], maxDepth: 2 });
  const hits = await store.search("w", {}, 20);
  const writes = await store.writesAfter(0, 10_000);
  return canonicalJson([dump, terms, examinations, [...one], claims, walked.terms, hits, writes]);
}

/** Spoils a page or some; says what it did. */
function spoil(path: string, older: string, random: RandomSource): string {
  const bytes = readFileSync(path);
  const before = readFileSync(older);
  const pages = bytes.length / PAGE;
  const number = random.below(pages);
  const at = number * PAGE;
  const way = random.pick(["random", "zeros", "bit", "sector", "other page", "older", "cut"] as const);
  const write = (part: Buffer, place = at): void => {
    const handle = openSync(path, "r+");
    writeSync(handle, part, 0, part.length, place);
    closeSync(handle);
  };
  const noise = (length: number): Buffer => Buffer.from(Array.from({ length }, () => random.below(256)));
  if (way === "random") write(noise(PAGE));
  else if (way === "zeros") write(Buffer.alloc(PAGE));
  else if (way === "bit") {
    const byte = at + random.below(PAGE);
    write(Buffer.from([(bytes[byte] ?? 0) ^ (1 << random.below(8))]), byte);
  } else if (way === "sector") write(noise(512), at + 512 * random.below(8));
  else if (way === "other page") {
    const other = random.below(pages) * PAGE;
    write(bytes.subarray(other, other + PAGE));
  } else if (way === "older") write(before.subarray(at, at + PAGE));
  else writeFileSync(path, bytes.subarray(0, Math.max(PAGE, at)));
  return `${way} at page ${number + 1} of ${pages}`;
}
