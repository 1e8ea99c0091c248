import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const web = fileURLToPath(new URL("../../../web", import.meta.url));
const FEATURES = "drawings/features/";

const sources = readdirSync(web, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
  .map((entry) => relative(web, join(entry.parentPath, entry.name)))
  .filter((file) => !file.startsWith("dist"));

/** Files that a file imports when it runs: types are gone by then. */
const imported = (file: string, pattern: RegExp): string[] =>
  [...readFileSync(join(web, file), "utf8").matchAll(pattern)]
    .filter(([whole]) => !/^\s*import\s+type\b/.test(whole.trim()))
    .map(([, path = ""]) =>
      path.startsWith("#web/") ? path.replace("#web/", "") : normalize(join(dirname(file), path)),
    );
const STATIC = /(?:^|\n)\s*(?:import|export)[^"'`;(]*?from\s+"([^"]+)"/g;
const DYNAMIC = /import\(\s*"([^"]+)"\s*\)/g;

describe("the drawings of features", () => {
  const outside = sources.filter((file) => !file.startsWith(FEATURES));

  it("are imported by no page, so that they are a chunk of their own", () => {
    const importers = outside.filter((file) =>
      imported(file, STATIC).some((path) => path.startsWith(FEATURES)),
    );
    expect(importers).toEqual([]);
  });

  it("are loaded in one place, when one is shown", () => {
    const loaders = outside.filter((file) =>
      imported(file, DYNAMIC).some((path) => path.startsWith(FEATURES)),
    );
    expect(loaders).toEqual(["drawings/FeatureDrawing.tsx"]);
  });

  it("import nothing but each other, the pen and the forms that pieces are drawn by", () => {
    const beyond = sources
      .filter((file) => file.startsWith(FEATURES))
      .flatMap((file) => imported(file, STATIC))
      .filter((path) => !path.startsWith("drawings/") && !path.includes("react"));
    expect(beyond).toEqual([]);
  });
});
