import { readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { generate } from "@graphql-codegen/cli";
import { describe, expect, it } from "vitest";
import config from "../../web/codegen.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

interface Generated {
  readonly filename: string;
  readonly content: string;
}

describe("the typed documents of the web client", () => {
  it("[P3] are what the schema and the documents give: else run npm run codegen", async () => {
    const files = (await generate({ ...config, cwd: root, silent: true }, false)) as readonly Generated[];
    expect(files.length).toBeGreaterThan(10);
    const stale = files
      .map(({ filename, content }) => ({
        file: relative(root, join(root, relative(root, filename))),
        content,
      }))
      .filter(({ file, content }) => readFileSync(join(root, file), "utf8") !== content)
      .map(({ file }) => file);
    expect(stale).toEqual([]);
  });
});
