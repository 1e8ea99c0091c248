import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A new folder outside the project. */
export const temporaryFolder = (): string => mkdtempSync(join(tmpdir(), "scribeline-neo4j-"));

/** Takes a folder away with all that is in it. */
export const removeFolder = (folder: string): void => rmSync(folder, { recursive: true, force: true });
