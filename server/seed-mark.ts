import { createHash } from "node:crypto";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** What a store was last compared with: the seed, and the newest revision that the store had then. Both are hashes. */
export interface SeedMark {
  readonly seed: string;
  readonly newest: string;
}

const pathOf = (dataFolder: string): string => join(dataFolder, "seed-mark.json");

/** SHA-256 over the names and the content of all files below a folder, in the order of their names. */
export async function hashFolder(folder: string): Promise<string> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const contents = await Promise.all(files.sort().map(async (file) => [file, await readFile(file)] as const));
  const hash = createHash("sha256");
  for (const [file, content] of contents)
    hash.update(`${file.slice(folder.length)}\0${content.length}\0`).update(content);
  return hash.digest("hex");
}

/** The mark of a data folder; none where there is no such file, or another thing in it. */
export async function readMark(dataFolder: string): Promise<SeedMark | undefined> {
  try {
    const { seed, newest } = JSON.parse(await readFile(pathOf(dataFolder), "utf8"));
    return typeof seed === "string" && typeof newest === "string" ? { seed, newest } : undefined;
  } catch {
    return undefined;
  }
}

/** Leaves a mark in a data folder. Where it cannot be written, the next start compares once more. */
export async function leaveMark(dataFolder: string, mark: SeedMark): Promise<void> {
  await writeFile(pathOf(dataFolder), `${JSON.stringify(mark)}\n`, { mode: 0o600 }).catch(() => undefined);
}
