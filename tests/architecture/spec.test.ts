import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Rules stated in docs/spec, as **[E12]** or **[E12] …**. */
const stated = readdirSync(join(root, "docs/spec"))
  .filter((file) => file.endsWith(".md"))
  .flatMap((file) => [...readFileSync(join(root, "docs/spec", file), "utf8").matchAll(/\*\*\[([A-Z]\d+)\]/g)])
  .map((match) => match[1] ?? "");

/** Rules cited by tests; `[A1] to [A4]` cites all four. */
const cited = new Set(
  readdirSync(join(root, "tests"), { recursive: true, withFileTypes: true })
    .filter(
      (entry) =>
        entry.isFile() && /\.test\.tsx?$|-suite\.ts$|\/suite\//.test(join(entry.parentPath, entry.name)),
    )
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !file.endsWith("spec.test.ts"))
    .flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(/\[([A-Z]\d+)\]/g)].map((match) => match[1] ?? ""),
    ),
);

describe("the behaviour that is written down", () => {
  it("is stated once a rule", () => {
    expect(stated.length).toBeGreaterThan(100);
    expect(stated.filter((rule, at) => stated.indexOf(rule) !== at)).toEqual([]);
  });

  it("has a test for each rule", () => {
    expect(stated.filter((rule) => !cited.has(rule))).toEqual([]);
  });

  it("states each rule that a test cites", () => {
    expect([...cited].filter((rule) => !stated.includes(rule)).sort()).toEqual([]);
  });
});
