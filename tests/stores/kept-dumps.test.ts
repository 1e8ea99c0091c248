import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openTemporary } from "#tests/support/temporary-store.ts";
import { keptDumps } from "./suite/kept-dumps.ts";

keptDumps("memory", async () => openMemoryStore());
keptDumps("sqlite", openTemporary);
