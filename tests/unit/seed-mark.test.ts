import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import { openData, openStore } from "#server/open-data.ts";
import { hashFolder, leaveMark, readMark } from "#server/seed-mark.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";
import { answered } from "#tests/support/expect-answer.ts";

const made: string[] = [];
const aFolder = (): string => {
  made.push(mkdtempSync(join(tmpdir(), "scribeline-mark-")));
  return made.at(-1) as string;
};
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

describe("the hash of a folder", () => {
  const aSeed = (): string => {
    const folder = aFolder();
    mkdirSync(join(folder, "terms"));
    writeFileSync(join(folder, "revision.json"), "{}");
    writeFileSync(join(folder, "terms/tools.jsonl"), "saw\n");
    return folder;
  };

  it("[A31] is that of the same files elsewhere, whenever they were written", async () => {
    const [one, other] = [aSeed(), aSeed()];
    utimesSync(join(other, "terms/tools.jsonl"), 1, 1);
    expect(await hashFolder(one)).toBe(await hashFolder(other));
    expect(await hashFolder(one)).toMatch(/^[0-9a-f]{64}$/);
  });

  it.each([
    ["another content", (folder: string) => writeFileSync(join(folder, "terms/tools.jsonl"), "saw \n")],
    ["one file more", (folder: string) => writeFileSync(join(folder, "terms/woods.jsonl"), "")],
    [
      "another name",
      (folder: string) => {
        rmSync(join(folder, "terms/tools.jsonl"));
        writeFileSync(join(folder, "terms/tool.jsonl"), "saw\n");
      },
    ],
    [
      "content moved from one file to the next",
      (folder: string) => {
        writeFileSync(join(folder, "revision.json"), "{}saw");
        writeFileSync(join(folder, "terms/tools.jsonl"), "\n");
      },
    ],
  ])("[A31] is another with %s", async (_, change) => {
    const folder = aSeed();
    const before = await hashFolder(folder);
    change(folder);
    expect(await hashFolder(folder)).not.toBe(before);
  });
});

describe("the mark of a data folder", () => {
  it("[A31] is read as it was left, by nobody else of the machine", async () => {
    const folder = aFolder();
    await leaveMark(folder, { seed: "a", newest: "b" });
    expect(await readMark(folder)).toEqual({ seed: "a", newest: "b" });
    expect(statSync(join(folder, "seed-mark.json")).mode & 0o077).toBe(0);
  });

  it.each(["", "{", "null", '{"seed":1,"newest":"b"}', '{"seed":"a"}'])(
    "[A31] is none where the file holds %j",
    async (text) => {
      const folder = aFolder();
      writeFileSync(join(folder, "seed-mark.json"), text);
      expect(await readMark(folder)).toBeUndefined();
    },
  );
});

describe("opening a data folder", () => {
  /** A store that holds one term of a seed that there is not any more. */
  async function anOlderStore() {
    const folder = aFolder();
    const store = answered(await openStore({ dataFolder: folder }, { readOnly: false }));
    const about = JSON.parse(readFileSync("seed-data/revision.json", "utf8")) as { by: string };
    const revision = answered(
      await store.commit(aCommit([{ kind: "term", after: aTerm("tool.none", "tool") }], { by: about.by })),
    );
    await store.close();
    return { folder, newest: revision.hash };
  }
  async function updatedBy(folder: string): Promise<number> {
    const data = await openData({ dataFolder: folder });
    if (isProblem(data)) throw new Error(data.message);
    await data.store.close();
    return data.updated;
  }

  it("[A31] compares it with the seed, once", async () => {
    const { folder } = await anOlderStore();
    expect(await updatedBy(folder)).toBeGreaterThan(1000);
    const mark = await readMark(folder);
    expect(mark?.seed).toBe(await hashFolder("seed-data"));
    expect(await updatedBy(folder)).toBe(0);
    expect(await readMark(folder)).toEqual(mark);
  });

  it("[A31] leaves it alone where the mark is of this seed and of its newest revision, and else does not", async () => {
    const { folder, newest } = await anOlderStore();
    const seed = await hashFolder("seed-data");
    await leaveMark(folder, { seed, newest });
    expect(await updatedBy(folder)).toBe(0);
    await leaveMark(folder, { seed, newest: "of another store" });
    expect(await updatedBy(folder)).toBeGreaterThan(1000);
    const other = await anOlderStore();
    await leaveMark(other.folder, { seed: "of another seed", newest: other.newest });
    expect(await updatedBy(other.folder)).toBeGreaterThan(1000);
  });
});
