import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { storeSuite } from "./store-suite.ts";

storeSuite("memory", async () => openMemoryStore());
