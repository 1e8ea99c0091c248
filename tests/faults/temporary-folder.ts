import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Does something with a new folder, which is removed afterwards. */
export async function inTemporaryFolder<Answer>(what: (folder: string) => Promise<Answer>): Promise<Answer> {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-faults-"));
  try {
    return await what(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
