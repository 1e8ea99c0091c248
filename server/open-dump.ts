import { isProblem, type Problem } from "./domain/problem.ts";
import { restoreDump } from "./dump/restore-dump.ts";
import type { Store } from "./ports/store.ts";
import { openMemoryStore } from "./stores/memory/open-memory-store.ts";

/** A store in memory with all that a dump file holds, or why it cannot be restored. */
export async function openDump(path: string): Promise<Store | Problem> {
  const store = openMemoryStore();
  const restored = await restoreDump(store, path);
  return isProblem(restored) ? restored : store;
}
