import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

const WEB = join(import.meta.dirname, "..");

/** Names of the operations in the `.graphql` documents below a folder, sorted. */
export function operationNamesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".graphql"))
    .flatMap((file) =>
      [
        ...readFileSync(join(folder, file), "utf8").matchAll(/^(?:query|mutation|subscription)\s+(\w+)/gm),
      ].map((found) => found[1] ?? ""),
    )
    .sort();
}

/** Writes `operations.json`: the names under which the server counts what the pages ask. */
export const operationNames: Plugin = {
  name: "scribeline:operation-names",
  apply: "build",
  writeBundle({ dir = "" }) {
    writeFileSync(join(dir, "operations.json"), JSON.stringify(operationNamesIn(WEB)));
  },
};
