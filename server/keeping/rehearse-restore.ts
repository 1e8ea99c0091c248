import { mkdtemp, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { isProblem, type Problem, problem } from "../domain/problem.ts";
import { restoreDump } from "../dump/restore-dump.ts";
import type { Progress } from "../ports/progress.ts";
import type { Store } from "../ports/store.ts";
import { readThrough } from "./watch-records.ts";

/** Opens a new, empty store in a folder that is there. */
export type OpenScratch = (folder: string) => Promise<Store | Problem>;

/**
 * Restores a dump file into a store of its own beside it, as one would have to after a loss: makes its whole history again (`verify`),
 * and dumps it, which must give the hash that is wanted. The store is taken away again. Says what is wrong.
 */
export async function rehearseRestore(
  file: string,
  sha256: string,
  { open, tell }: { readonly open: OpenScratch; readonly tell: Progress },
): Promise<Problem | undefined> {
  const folder = await mkdtemp(join(dirname(file), "rehearsal-"));
  try {
    const store = await open(folder);
    if (isProblem(store)) return store;
    try {
      return await rehearse(store, file, sha256, tell);
    } finally {
      await store.close();
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function rehearse(
  store: Store,
  file: string,
  sha256: string,
  tell: Progress,
): Promise<Problem | undefined> {
  let edits = 0;
  const restored = await restoreDump(store, file, (record) => {
    if (record.kind === "revision") edits += record.change.length;
    tell(() => `Rehearsing the restore: ${edits} edits`);
  });
  if (isProblem(restored)) return restored;
  tell(() => "Rehearsing the restore: making the history again");
  const verified = await store.verify();
  if (isProblem(verified)) return verified;
  const again = await readThrough(store.dump());
  if (again.sha256 === sha256) return undefined;
  return problem(
    "DAMAGED_DUMP",
    `The backup was restored, and what came of it has another hash (${again.sha256}) than the store that was backed up (${sha256}); it was not kept.`,
  );
}
