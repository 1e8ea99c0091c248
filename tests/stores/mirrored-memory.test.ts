import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openMirrored } from "#tests/support/mirrored.ts";
import { storeSuite } from "./store-suite.ts";

storeSuite("memory, mirrored", () => openMirrored(openMemoryStore()));
storeSuite("memory, mirrored with nothing kept beside the arrays", () =>
  openMirrored(openMemoryStore(), { caches: { claims: 0, terms: 0 } }),
);
