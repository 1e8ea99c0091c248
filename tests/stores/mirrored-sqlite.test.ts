import { openMirrored } from "#tests/support/mirrored.ts";
import { openTemporary } from "#tests/support/temporary-store.ts";
import { storeSuite } from "./store-suite.ts";

storeSuite("sqlite, mirrored", async () => openMirrored(await openTemporary()), 40);
