import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Names of the operations of the built client's pages, as its build listed them; none where it left no list. */
export function operationNames(folder: string): readonly string[] {
  const file = join(folder, "operations.json");
  return existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as readonly string[]) : [];
}
