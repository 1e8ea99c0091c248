import { readdir } from "node:fs/promises";
import { join } from "node:path";

/** Paths of the files of a folder whose names have this ending, by name; none if there is no such folder. */
export async function filesIn(folder: string, ending: string): Promise<readonly string[]> {
  const names = await readdir(folder).catch((failure: NodeJS.ErrnoException) => {
    if (failure.code === "ENOENT") return [];
    throw failure;
  });
  return names
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => join(folder, name));
}
