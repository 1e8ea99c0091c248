import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const MOST_LINES = 300;
const MEDIAN_LINES = 80;

/** Files over the limit, each with the reason why it is one thing. The list only shrinks. */
const EXCEPTIONS: Readonly<Record<string, string>> = {};

const FORBIDDEN_NAMES = /(^|\/)(utils?|helpers?|common|misc|manager|index)(\.tsx?|\/)/;

function files(): { file: string; lines: number }[] {
  return ["server", "web"].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.name.endsWith(".graphql.ts"))
      .map((entry) => relative(root, join(entry.parentPath, entry.name)))
      .filter((file) => !file.includes("dist/"))
      .map((file) => ({ file, lines: readFileSync(join(root, file), "utf8").split("\n").length - 1 })),
  );
}

describe("files stay small and named after what they hold", () => {
  const all = files();

  it(`has no file over ${MOST_LINES} lines without a stated reason`, () => {
    const long = all.filter(({ lines }) => lines > MOST_LINES).map(({ file }) => file);
    expect(long.sort()).toEqual(Object.keys(EXCEPTIONS).sort());
  });

  it(`has a median of at most ${MEDIAN_LINES} lines`, () => {
    const sorted = all.map(({ lines }) => lines).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(MEDIAN_LINES);
  });

  it("has no grab-bags and no barrels", () => {
    expect(all.map(({ file }) => file).filter((file) => FORBIDDEN_NAMES.test(file))).toEqual([]);
  });
});
