import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { PAGES_AHEAD } from "#web/pages-ahead.ts";

const web = fileURLToPath(new URL("../../web/", import.meta.url));
const app = readFileSync(`${web}app.tsx`, "utf8");
const ahead = JSON.parse(readFileSync(`${web}dist/ahead.json`, "utf8")) as {
  path: string;
  files: string[];
}[];

describe("the list of what a page needs", () => {
  it("[A30] has each route of the client, and no other", () => {
    const routes = [...app.matchAll(/^ {2}"(\/[^"]*)":|path="(\/[^"]*)"/gm)].map(
      (match) => match[1] ?? match[2],
    );
    expect(routes.length).toBeGreaterThan(15);
    expect(Object.keys(PAGES_AHEAD).sort()).toEqual(routes.sort());
  });

  it("[A30] has each module that a route loads, and no other", () => {
    const loaded = [...app.matchAll(/import\("\.\/([^"]+)"\)/g)].map((match) => match[1]);
    expect([...new Set(Object.values(PAGES_AHEAD).flat())].sort()).toEqual([...new Set(loaded)].sort());
  });

  it("[A30] meets each address once: the build lists files for it that are there", () => {
    for (const [address, module] of [
      ["/terms/tool.circular-saw", "TermPage"],
      ["/terms/tool.circular-saw/around", "AroundPage"],
      ["/regions/compare", "ComparePage"],
      ["/", "StartPage"],
    ] as const) {
      const [first] = ahead.filter(({ path }) => new RegExp(path).test(address));
      expect(first?.files.some((file) => file.includes(`/${module}-`))).toBe(true);
      for (const file of first?.files ?? []) expect(readFileSync(`${web}dist${file}`, "utf8")).not.toBe("");
    }
  });
});
